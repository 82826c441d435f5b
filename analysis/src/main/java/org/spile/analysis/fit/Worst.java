package org.spile.analysis.fit;

import java.util.Comparator;

/** Which of several answers to one question stands: the worst verdict, then the least margin, then the least worst case. */
final class Worst {
    static final Comparator<Answer> FIRST = Comparator.comparing(
                    (Answer answer) -> answer.outcome().verdict())
            .thenComparingDouble(answer -> answer.outcome().marginMm())
            .thenComparingDouble(answer -> answer.outcome().worstMm());

    private Worst() {}
}
