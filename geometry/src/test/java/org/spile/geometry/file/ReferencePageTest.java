package org.spile.geometry.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Holds the reference page to the definitions; {@code -Dspile.rewrite=true} writes its generated parts anew. */
class ReferencePageTest {
    private static final Path PAGE = Houses.inProject("docs/reference/house-file.md");
    private static final Pattern BLOCK = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);

    @Test
    void keys_asDefined() throws IOException {
        checkPart("keys", KeyTables.keys());
    }

    @Test
    void materials_asShipped() throws IOException {
        checkPart("materials", KeyTables.materials());
    }

    @Test
    void mistakes_asTold() throws IOException {
        var table = new StringBuilder("\n| typed | told |\n|---|---|\n");
        for (Mistake mistake : Mistake.all()) {
            table.append("| ")
                    .append(mistake.doubt() ? "? " : "")
                    .append('`')
                    .append(mistake.shown())
                    .append("` | `");
            table.append(mistake.told()).append("` |\n");
        }
        checkPart("mistakes", table.append('\n').toString());
    }

    @Test
    void wholeHousesOnThePage_areSound() {
        List<String> houses = new ArrayList<>();
        Matcher block = BLOCK.matcher(Houses.read(PAGE));
        while (block.find()) {
            if (block.group(1).contains("cavities:") && block.group(1).contains("units:")) {
                houses.add(block.group(1));
            }
        }
        assertEquals(2, houses.size());
        houses.forEach(Houses::sound);
    }

    @Test
    void fragmentsOnThePage_areYaml() {
        Matcher block = BLOCK.matcher(Houses.read(PAGE));
        int found = 0;
        while (block.find()) {
            // Several forms of one key may stand below each other, each by itself right.
            for (String line :
                    block.group(1).lines().filter(each -> !each.startsWith(" ")).toList()) {
                Tree tree = Tree.of("page", line + "\n");
                assertTrue(!tree.broken() && tree.problems().isEmpty(), line + ": " + tree.problems());
            }
            found++;
        }
        assertTrue(found >= 8, "blocks found: " + found);
    }

    private static void checkPart(String name, String fresh) throws IOException {
        String page = Houses.read(PAGE);
        int start = page.indexOf("-->\n", page.indexOf("<!-- " + name + ":")) + "-->\n".length();
        int end = page.indexOf("<!-- end of " + name + " -->");
        assertTrue(start > 3 && end >= start, "the page has no part " + name);
        if (Houses.rewrites()) {
            Files.writeString(PAGE, page.substring(0, start) + fresh + page.substring(end));
            return;
        }
        assertEquals(fresh, page.substring(start, end), "run this test with -Dspile.rewrite=true");
    }
}
