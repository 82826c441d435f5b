'use strict'
// Reads a DXF with two unrelated libraries and prints what each counts in model space, for a test to compare.
const fs = require('fs')

function show (name, entities) {
  const counts = {}
  for (const entity of entities) counts[entity.type] = (counts[entity.type] || 0) + 1
  for (const type of Object.keys(counts).sort()) console.log(name, type, counts[type])
}

const text = fs.readFileSync(process.argv[2], 'latin1')
const lib = require('dxf-parser')
const DxfParser = lib.DxfParser || lib.default || lib
show('dxf-parser', new DxfParser().parseSync(text).entities.filter(e => !e.inPaperSpace && e.type !== 'ATTRIB'))
show('dxf', require('dxf').parseString(text).entities.filter(e => !e.paperSpace && e.type !== 'ATTRIB'))
