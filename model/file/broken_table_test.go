package file_test

import "strings"

// whole is a small sound file.
const whole = `format = 1

[[termination]]
id = "P1"

[[termination]]
id = "P2"

[[breakout]]
id = "J1"

[[wire]]
id = "1"
spec = "x"
size = "22"

[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 100
` // 21 lines

// broken are files that do not load, each with the whole text of its error. The
// line break before a text of several lines is no part of it.
var broken = []struct{ name, text, want string }{
	{"empty", "", `f.toml:1: key format: it is missing. Put format = 1 at the head of the file`},
	{"only a comment", "# nothing\n", `f.toml:1: key format: it is missing. Put format = 1 at the head of the file`},
	{"format missing, more wrong", "[harness]\nnmae = 3\n", `f.toml:1: key format: it is missing. Put format = 1 at the head of the file`},
	{"format of the future, more wrong", "# a\n\nformat = 2\nnew = 1\n",
		`f.toml:3: key format: is the whole number 2; allowed: 1, the only format this program reads`},
	{"format as text", "format = \"1\"\n", `f.toml:1: key format: is the text "1"; allowed: 1, the only format this program reads`},
	{"format as float", "format = 1.0\n", `f.toml:1: key format: is the number 1.0; allowed: 1, the only format this program reads`},
	{"syntax", "format = 1\n[harness]\nname = \"a\n\n", `f.toml:3: this is not TOML: strings cannot contain newlines`},
	{"syntax at the end", "format = 1\n[harness]\nname =", `f.toml:3: this is not TOML: unexpected EOF; expected value`},
	{"key twice", "format = 1\n[harness]\nname = \"a\"\nnote = \"\"\nname = \"b\"\n",
		`f.toml:5: this is not TOML: Key 'harness.name' has already been defined`},
	{"not UTF-8", "format = 1\n[harness]\nname = \"\xff\"\n", `f.toml:3: this is not TOML: invalid UTF-8 byte: 0xff`},
	{"too deep", "format = 1\n\nx = " + strings.Repeat("[", 100),
		`f.toml:3: brackets in brackets, or the parts of a key, are nested too deep; allowed: 32`},
	{"too many parts", "format = 1\n" + strings.Repeat("a.", 100) + "a = 1\n",
		`f.toml:2: brackets in brackets, or the parts of a key, are nested too deep; allowed: 32`},
	{"unknown table", whole + "[[wires]]\nid = \"a\"\n",
		`f.toml:22: key wires: it is not known (did you mean wire?); allowed: format, harness, rules, board, reel, part, termination, ` +
			`breakout, splice, wire, feed, unit, branch, build, listed`},
	{"unknown key, near", whole + "\n[[wire]]\nid = \"2\"\nspec = \"x\"\nsize = \"22\"\ncolor = \"6\"\n",
		`f.toml:27: wire "2", key color: it is not known (did you mean colour?); allowed: id, signal, from, to, spec, size, ` +
			`colour, shade, amps, on_s, period_s, rest_a, role, safety, return, capped_at, fold_mm, measured_drop_v, note`},
	{"unknown key, by case", "format = 1\n[harness]\nName = \"a\"\n",
		`f.toml:3: harness, key Name: it is not known (did you mean name?); allowed: name, number, revision, supply_v, short_a, ` +
			`use, units, listed_from, mock_up, note`},
	{"unknown key, far", "format = 1\n[[breakout]]\nid = \"J\"\nhardware = 1\n",
		`f.toml:4: breakout "J", key hardware: it is not known; allowed: id, name, transition, build, zone_mm`},
	{"unknown key that a terminal would obey", "format = 1\n\"\\u001B[2J\" = 1\n",
		`f.toml:2: key "␛[2J": it is not known; allowed: format, harness, rules, board, reel, part, termination, breakout, splice, ` +
			`wire, feed, unit, branch, build, listed`},
	{"dotted key", "format = 1\nharness.\"units\" = \"cm\"\n", `f.toml:2: harness, key units: is the text "cm"; allowed: "mm", "in"`},
	{"list for table", "format = 1\n[[harness]]\nname = \"a\"\n", `f.toml:2: harness: is a list of tables; allowed: one table, [harness]`},
	{"table for list", "format = 1\n[wire]\nid = \"a\"\n",
		`f.toml:2: wire: is a table; allowed: a list of tables, [[wire]] at the head of each`},
	{"wrong types", `format = 1
[harness]
name = 7
supply_v = "12"
note = 2020-01-01
[[termination]]
id = "P1"
clock = 12.0
reserved = "Z"
contacts = { "20" = [1] }
[[unit]]
id = "U"
wires = []
shield = "yes"
`, `
f.toml:3: harness, key name: is the whole number 7; allowed: text in quotes, such as "22"
f.toml:4: harness, key supply_v: is the text "12"; allowed: a number in V, 0 or more
f.toml:5: harness, key note: is a date or time; allowed: text in quotes, such as "22"
f.toml:8: termination "P1", key clock: is the number 12.0; allowed: a whole number from 1 to 12
f.toml:9: termination "P1", key reserved: is the text "Z"; allowed: a list in brackets; each item must be text in quotes
f.toml:10: termination "P1", key contacts: "20" item 1 is the whole number 1; allowed: text in quotes, such as "22"
f.toml:14: unit "U", key shield: is the text "yes"; allowed: true or false`},
	{"not numbers", "format = 1\n[rules]\nlay_ratio = nan\nlift_max = +inf\nzone_mm = -inf\n", `
f.toml:3: rules, key lay_ratio: is nan, which is not a finite number; allowed: a number, 0 or more
f.toml:4: rules, key lift_max: is inf, which is not a finite number; allowed: a number, 0 or more
f.toml:5: rules, key zone_mm: is -inf, which is not a finite number; allowed: a number in mm, 0 or more`},
	{"below their range", `format = 1
[rules]
zone_mm = -0.1
ambient_c = -273.2
spares_wanted = -1
filler_stock_mm = [1.0, 0.0]
[harness]
supply_v = -1
[[reel]]
spec = "x"
size = "22"
over_mm = 0
`, `
f.toml:3: rules, key zone_mm: is the number -0.1; allowed: a number in mm, 0 or more
f.toml:4: rules, key ambient_c: is the number -273.2; allowed: a number in °C, -273.15 or more
f.toml:5: rules, key spares_wanted: is the whole number -1; allowed: a whole number from 0 to 9999
f.toml:6: rules, key filler_stock_mm: item 2 is the number 0.0; allowed: a number in mm, more than 0
f.toml:8: harness, key supply_v: is the whole number -1; allowed: a number in V, 0 or more
f.toml:12: reel no. 1, key over_mm: is the whole number 0; allowed: a number in mm, more than 0`},
	{"outside their lists", `format = 1
[harness]
units = "inch"
[rules]
outer = "S"
[[termination]]
id = "P1"
gender = "male"
mount = "nut"
datum = "face"
clock = 0
boot_clock = 13
[[breakout]]
id = "J1"
build = "moulded"
[[wire]]
id = "1"
spec = ""
size = ""
role = "Power"
[[unit]]
id = "U"
wires = []
build = "octet"
[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 1
environment = ["oil", "water"]
make = "woven"
outer = "lh"
[[branch.cover]]
what = "paint"
`, `
f.toml:3: harness, key units: is the text "inch"; allowed: "mm", "in"
f.toml:5: rules, key outer: is the text "S"; allowed: "LH", "RH"
f.toml:8: termination "P1", key gender: is the text "male"; allowed: "pin", "socket"
f.toml:9: termination "P1", key mount: is the text "nut"; allowed: "inline", "flange", "jam nut"
f.toml:10: termination "P1", key datum: is the text "face"; allowed: "boot lip", "shell rear", "grommet", "mating face"
f.toml:11: termination "P1", key clock: is the whole number 0; allowed: a whole number from 1 to 12
f.toml:12: termination "P1", key boot_clock: is the whole number 13; allowed: a whole number from 1 to 12
f.toml:15: breakout "J1", key build: is the text "moulded"; allowed: "taped", "open"
f.toml:20: wire "1", key role: is the text "Power"; allowed: "power", "ground", "signal", "data", "spare"
f.toml:24: unit "U", key build: is the text "octet"; allowed: "pair", "triple", "quad"
f.toml:30: branch "T1", key environment: item 2 is the text "water"; allowed: "vibration", "abrasion", "oil", "fuel", "heat", "flexing"
f.toml:31: branch "T1", key make: is the text "woven"; allowed: "laid", "twisted", "straight"
f.toml:32: branch "T1", key outer: is the text "lh"; allowed: "LH", "RH"
f.toml:34: branch "T1", cover no. 1, key what: is the text "paint"; allowed: "tape", "braid", "sleeve", "sheath"`},
	{"pairs", `format = 1
[[termination]]
id = "P1"
seal_mm = [2.1, 1.0]
[[termination]]
id = "P2"
seal_mm = []
[[branch]]
id = "T1"
from = "P1"
to = "P2"
length_mm = 1
tolerance_mm = [
  1,
  2, # three
  3,
]
`, `
f.toml:4: termination "P1", key seal_mm: runs from 2.1 to 1.0; allowed: the smaller first: the smallest and the ` +
		`largest wire that the seal fits
f.toml:7: termination "P2", key seal_mm: has 0 numbers; allowed: exactly two: the smallest and the largest wire that the seal fits
f.toml:13: branch "T1", key tolerance_mm: has 3 numbers; allowed: exactly two: how much shorter it may be, and how much longer`},
	{"keys that must be there", `format = 1
[[reel]]
[[termination]]
[[splice]]
id = "S1"
[[wire]]
id = "1"
[[unit]]
id = "U"
[[branch]]
id = "T1"
[[branch.cover]]
[[branch.as_built]]
`, `
f.toml:2: reel no. 1, key spec: it is missing, and a file must give it
f.toml:2: reel no. 1, key size: it is missing, and a file must give it
f.toml:2: reel no. 1, key over_mm: it is missing, and a file must give it
f.toml:3: termination no. 1, key id: it is missing, and a file must give it
f.toml:4: splice "S1", key at: it is missing, and a file must give it
f.toml:6: wire "1", key spec: it is missing, and a file must give it
f.toml:6: wire "1", key size: it is missing, and a file must give it
f.toml:8: unit "U", key wires: it is missing, and a file must give it
f.toml:10: branch "T1", key from: it is missing, and a file must give it
f.toml:10: branch "T1", key to: it is missing, and a file must give it
f.toml:10: branch "T1", key length_mm: it is missing, and a file must give it
f.toml:12: branch "T1", cover no. 1, key what: it is missing, and a file must give it
f.toml:13: branch "T1", as_built no. 1, key layer: it is missing, and a file must give it`},
	{"no length", strings.Replace(whole, "length_mm = 100", "length_mm = -1", 1),
		`f.toml:21: branch "T1", key length_mm: is the whole number -1; allowed: a number in mm, 0 or more`},
	{"ids twice", whole + `
[[termination]]
id = "P1"
[[breakout]]
id = "P2"
[[splice]]
id = "a:b"
at = "J1"
[[wire]]
id = ""
spec = "x"
size = "22"
[[unit]]
id = "1"
wires = ["1"]
`, `
f.toml:24: termination "P1", key id: "P1" is given twice; allowed: an id that no other termination has
f.toml:26: breakout "P2", key id: "P2" is the id of a termination; allowed: an id that no breakout and no termination has, because ` +
		`a branch may name either
f.toml:28: splice "a:b", key id: "a:b" has a colon; allowed: an id without a colon, because wires write TERMINATION:CAVITY
f.toml:31: wire no. 2, key id: it is empty; allowed: any text that no other wire has as its id
f.toml:35: unit "1", key id: "1" is the id of a wire; allowed: an id that no unit and no wire has, because a layer may name either`},
	{"references", whole + `
[[splice]]
id = "S1"
at = "P1"
toward = "T9"
[[wire]]
id = "2"
from = "P9:A"
to = "S9"
spec = "x"
size = "22"
return = "9"
[[wire]]
id = "3"
from = "P1:"
spec = "x"
size = "22"
[[unit]]
id = "U1"
wires = ["9", "2"]
drain_from = "shelf"
[[unit]]
id = "U2"
wires = ["2"]
[[branch]]
id = "T2"
from = "J9"
to = "P2"
length_mm = 1
[[branch.layer]]
of = ["1", "9"]
[[branch.layer]]
pinned = ["8"]
`, `
f.toml:25: splice "S1", key at: no breakout has the id "P1"; allowed: a breakout of this file: "J1"
f.toml:26: splice "S1", key toward: no branch has the id "T9"; allowed: a branch of this file: "T1", "T2"
f.toml:29: wire "2", key from: no termination has the id "P9"; allowed: TERMINATION:CAVITY, where TERMINATION is a termination of ` +
		`this file: "P1", "P2"
f.toml:30: wire "2", key to: no splice has the id "S9"; allowed: TERMINATION:CAVITY, or the id of a splice of this file: "S1"
f.toml:33: wire "2", key return: no wire has the id "9"; allowed: a wire of this file: "1", "2", "3"
f.toml:36: wire "3", key from: "P1:" names no cavity; allowed: TERMINATION:CAVITY, or the id of a splice
f.toml:41: unit "U1", key wires: no wire has the id "9"; allowed: a wire of this file: "1", "2", "3"
f.toml:42: unit "U1", key drain_from: no splice has the id "shelf"; allowed: "shell", "cut", TERMINATION:CAVITY, or the id of a ` +
		`splice of this file: "S1"
f.toml:45: unit "U2", key wires: wire "2" is in unit "U1" already; allowed: each wire in one unit only, and once
f.toml:48: branch "T2", key from: no termination or breakout has the id "J9"; allowed: a breakout of this file: "J1"; or a ` +
		`termination of this file: "P1", "P2"
f.toml:52: branch "T2", centre, key of: no wire or unit has the id "9"; allowed: a unit of this file: "U1", "U2"; or a wire of ` +
		`this file: "1", "2", "3"
f.toml:54: branch "T2", layer 1, key pinned: no wire or unit has the id "8"; allowed: a unit of this file: "U1", "U2"; or a ` +
		`wire of this file: "1", "2", "3"`},
	{"loop", whole + `
[[branch]]
id = "T2"
from = "J1"
to = "P2"
length_mm = 1
[[branch]]
id = "T3"
from = "P2"
to = "P1"
length_mm = 1
[[branch]]
id = "T4"
from = "P2"
to = "P2"
length_mm = 1
`, `
f.toml:31: branch "T3", key to: the branch closes a loop: "P2" and "P1" are joined already; allowed: a tree: one way from any ` +
		`place to any other
f.toml:36: branch "T4", key to: the branch runs from "P2" to itself; allowed: two different places`},
	{"component twice", whole + `
  [[branch.layer]]
  of = ["1", "U"]
  [[branch.layer]]
  of = [
    "1", # again
    "2",
  ]

[[wire]]
id = "2"
spec = "x"
size = "22"
[[unit]]
id = "U"
wires = ["2"]
`, `
f.toml:26: branch "T1", layer 1, key of: "1" is in this branch twice; allowed: each wire and unit once in a branch
f.toml:26: branch "T1", layer 1, key of: wire "2" is in this branch twice: by itself and in unit "U"; allowed: each wire once in a branch`},
	{"strings that look like tables", `format = 1
[harness]
note = """
[[wire]]
id = "not one"
[[branch]]
length_mm = -1"""
[[build]]
serial = "1"
note = '''
[[branch]]
length_mm = -1'''
[[wire]] # the first
id = "1"
spec = 'x # no comment'
size = "22"
amps = -1
`, `f.toml:17: wire "1", key amps: is the whole number -1; allowed: a number in A, 0 or more`},
	{"inline tables", `format = 1
breakout = [{ id = "J1" },
  { id = "J2", zone_mm = -2 }]
`, `f.toml:3: breakout "J2", key zone_mm: is the whole number -2; allowed: a number in mm, 0 or more`},
	{"more than a person reads", "format = 1\n[harness]\n" + many(25), `
f.toml:3: harness, key x: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, listed_from, mock_up, note
f.toml:4: harness, key xy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, listed_from, mock_up, note
f.toml:5: harness, key xyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, listed_from, mock_up, note
f.toml:6: harness, key xyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, listed_from, mock_up, note
f.toml:7: harness, key xyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, listed_from, mock_up, note
f.toml:8: harness, key xyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, listed_from, mock_up, note
f.toml:9: harness, key xyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, listed_from, mock_up, note
f.toml:10: harness, key xyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:11: harness, key xyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:12: harness, key xyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:13: harness, key xyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, listed_from, ` +
		`mock_up, note
f.toml:14: harness, key xyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:15: harness, key xyyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:16: harness, key xyyyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:17: harness, key xyyyyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:18: harness, key xyyyyyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:19: harness, key xyyyyyyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:20: harness, key xyyyyyyyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:21: harness, key xyyyyyyyyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml:22: harness, key xyyyyyyyyyyyyyyyyyyy: it is not known; allowed: name, number, revision, supply_v, short_a, use, units, ` +
		`listed_from, mock_up, note
f.toml: and 5 more`},

	{"a record of a step that cannot be read", whole + `
[[build]]
serial = "1"
goes_by = "none"
[[build.step]]
what = { size = 22 }
[[build.step]]
key = "cut 2"
what = { length = 750.0 }
[[build.step]]
key = "cut 3"
what = "22 AWG"
sheet = { mm = -1.0 }
[[build.lot]]
of = "x 22"
[[build.test]]
ohm = "open"
`, `
f.toml:25: build no. 1, key goes_by: is the text "none"; allowed: a list in brackets; each item must be text in quotes
f.toml:26: build no. 1, step no. 1, key key: it is missing, and a file must give it
f.toml:27: build no. 1, step no. 1, key what: in it, size: is the whole number 22; allowed: text in quotes, such as "22"
f.toml:30: build no. 1, step no. 2, key what: in it, length: it is not known; allowed: spec, size, colour, part, place, hand, members, ` +
		`ends, fillers, filler_mm, bind_mm, mm, finished_mm, from_mm, to_mm, lay_mm, over_mm, path, path_mm
f.toml:33: build no. 1, step no. 3, key what: is the text "22 AWG"; allowed: a table on one line, what = { ... }
f.toml:34: build no. 1, step no. 3, key sheet: in it, mm: is the number -1.0; allowed: a number in mm, 0 or more
f.toml:35: build no. 1, lot no. 1, key lot: it is missing, and a file must give it
f.toml:38: build no. 1, test no. 1, key ohm: is the text "open"; allowed: a number, 0 or more`},
}

func many(n int) string {
	var b strings.Builder
	for i := range n {
		b.WriteString("x" + strings.Repeat("y", i) + " = 1\n")
	}
	return b.String()
}
