package values

import (
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
)

// label is what a person reads of a key.
type label struct {
	says string // what it is called
	does string // what it does, in one plain line
	unit string // behind a count or a pure number
	item string // what one of its list is called; of a table of lists, what each list is of
	pair [2]string

	from  source  // what it is chosen from; nil where it is typed
	items source  // of a table of lists: what each list is chosen from
	left  fallout // what holds where it is left out; nil: nothing is known
	first float64 // where + begins when nothing is known
	step  float64 // of + and −; 0 goes by the size of the number
	order bool    // the order of its list counts
	round bool    // + goes from the last to the first, as on a clock
	taken bool    // its list holds what is in use already: + - do not step into that
}

// source lists what a key of a record may be.
type source func(m *desk.Model, at schema.At) []desk.Choice

// fallout is what holds where a key is left out, as schema.Get would have it, and by what.
type fallout func(m *desk.Model, at schema.At, key string) (value any, by string)

// noun is what a person reads of a table.
type noun struct {
	one, many string
	does      string // what the records of it are
	order     bool   // their order counts
}

// labels are those of every table, by its name in the schema.
var labels = map[string]map[string]label{
	"harness": headLabels, "rules": rulesLabels, "reel": reelLabels, "part": partLabels, "termination": terminationLabels,
	"breakout": breakoutLabels, "splice": spliceLabels, "wire": wireLabels, "feed": feedLabels, "unit": unitLabels,
	"branch": branchLabels, "branch.layer": layerLabels, "branch.cover": coverLabels, "branch.as_built": asBuiltLabels,
	"branch.aside": asideLabels, "branch.aside.layer": layerLabels, "build": buildLabels, "build.step": tickedLabels,
	"build.step.what": whatLabels, "build.step.sheet": whatLabels, "build.signed": signedLabels, "build.reading": readingLabels,
	"build.wire": usedLabels, "build.tube": tubeLabels, "build.again": againLabels, "build.deviation": deviationLabels,
	"build.test": testLabels, "build.lot": lotLabels, "listed": listedLabels,
}

// nouns are the tables, by their names in the schema.
var nouns = map[string]noun{
	"harness":            {one: "this harness", does: "Name, number, revision, supply"},
	"rules":              {one: "rules of this shop", does: "Limits and habits, each with its default beside it"},
	"reel":               {one: "reel", many: "reels", does: "Wire measured on this job, and how much there is"},
	"part":               {one: "part", many: "parts", does: "What you read off a tube or a boot in hand"},
	"termination":        {one: "termination", many: "terminations", does: "Where wires stop: connectors, rings, flying leads"},
	"breakout":           {one: "breakout", many: "breakouts", does: "Where branches meet"},
	"splice":             {one: "splice", many: "splices", does: "Where one wire becomes several"},
	"wire":               {one: "wire", many: "wires", does: "Each insulated conductor, from one end to the other"},
	"feed":               {one: "feed", many: "feeds", does: "Fuses and electronic limits, with the wires on them"},
	"unit":               {one: "unit", many: "units", does: "Wires made up first and laid as one"},
	"branch":             {one: "branch", many: "branches", does: "Each run of bundle between two places"},
	"branch.layer":       {one: "layer", many: "layers", does: "Its lay-up, from the centre outward", order: true},
	"branch.cover":       {one: "cover", many: "covers", does: "What goes over it, from the inside out", order: true},
	"branch.as_built":    {one: "measured layer", many: "measured layers", does: "What was measured on the board"},
	"branch.aside":       {one: "lay-up set aside", many: "lay-ups set aside", does: "To compare with, or to come back to"},
	"branch.aside.layer": {one: "layer", many: "layers", does: "The lay-up, from the centre outward", order: true},
	"build":              {one: "build", many: "builds", does: "The record of each harness that was built, by its serial"},
	"build.step":         {one: "step", many: "steps done", does: "What was ticked at the board, and what it made", order: true},
	"build.step.what":    {one: "what was made"},
	"build.step.sheet":   {one: "what the sheet had"},
	"build.signed":       {one: "signature", many: "signatures", does: "Holds that somebody has passed"},
	"build.reading":      {one: "reading", many: "readings", does: "What was measured, layer by layer"},
	"build.wire":         {one: "wire used", many: "wire used", does: "How much was taken off each reel"},
	"build.tube":         {one: "sheath measured", many: "sheaths measured", does: "Over the sheath, once shrunk"},
	"build.again":        {one: "contact made again", many: "contacts made again", does: "How often each was made again"},
	"build.deviation":    {one: "deviation", many: "deviations", does: "What was built otherwise than the sheet says"},
	"build.test":         {one: "test", many: "tests", does: "What was tested, and what was read"},
	"build.lot":          {one: "lot", many: "lots", does: "What each part and reel was taken from"},
	"listed":             {one: "net", many: "independent list", does: "What somebody else's list joins, to check against"},
}

// labelOf is the label of a key. One that has none is called by its name, so that a person can
// still change it; a test fails where that is so.
func labelOf(table, key string) label {
	if l, ok := labels[table][key]; ok {
		return l
	}
	return label{says: key}
}

// nounOf is the noun of a table; one that has none is called by its name.
func nounOf(table string) noun {
	if n, ok := nouns[table]; ok {
		return n
	}
	return noun{one: table, many: table}
}
