package label

import (
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
)

// Label is what a person reads of a key, and how it is offered.
type Label struct {
	Says string    // what it is called
	Does string    // what it does, in one plain line
	Unit string    // behind a count or a pure number
	Item string    // what one of its list is called; of a table of lists, what each list is of
	Pair [2]string // what the two of a pair are called

	From  Source  // what it is chosen from; nil where it is typed
	Items Source  // of a table of lists: what each list is chosen from
	Left  Fallout // what holds where it is left out; nil: nothing is known
	First float64 // where + begins when nothing is known
	Step  float64 // of + and −; 0 goes by the size of the number
	Order bool    // the order of its list counts
	Round bool    // + goes from the last to the first, as on a clock
	Taken bool    // its list holds what is in use already: + - do not step into that
}

// Source lists what a key of a record may be.
type Source func(m *desk.Model, at schema.At) []desk.Choice

// Fallout is what holds where a key is left out, as schema.Get would have it, and by what.
type Fallout func(m *desk.Model, at schema.At, key string) (value any, by string)

// Noun is what a person reads of a table.
type Noun struct {
	One, Many string
	Does      string // what the records of it are
	Order     bool   // their order counts
}

// labels are those of every table, by its name in the schema.
var labels = map[string]map[string]Label{
	"harness": headLabels, "rules": rulesLabels, "reel": reelLabels, "part": partLabels, "termination": terminationLabels,
	"breakout": breakoutLabels, "splice": spliceLabels, "wire": wireLabels, "feed": feedLabels, "unit": unitLabels,
	"board": boardLabels, "branch.via": viaLabels,
	"branch": branchLabels, "branch.layer": layerLabels, "branch.cover": coverLabels, "branch.as_built": asBuiltLabels,
	"branch.aside": asideLabels, "branch.aside.layer": layerLabels, "branch.aside.cover": coverLabels,
	"build": buildLabels, "build.shelf": shelfLabels, "build.step": tickedLabels,
	"build.step.what": whatLabels, "build.step.sheet": whatLabels, "build.signed": signedLabels, "build.reading": readingLabels,
	"build.wire": usedLabels, "build.tube": tubeLabels, "build.again": againLabels, "build.deviation": deviationLabels,
	"build.test": testLabels, "build.lot": lotLabels, "listed": listedLabels,
}

// nouns are the tables, by their names in the schema.
var nouns = map[string]Noun{
	"harness":            {One: "this harness", Does: "Name, number, revision, supply"},
	"rules":              {One: "rules of this shop", Does: "Limits and habits, each with its default beside it"},
	"board":              {One: "board", Does: "What the full-size drawing lies on: its size, its pegs, its datum"},
	"reel":               {One: "reel", Many: "reels", Does: "Wire measured on this job, and how much there is"},
	"part":               {One: "part", Many: "parts", Does: "What you read off a tube or a boot in hand"},
	"termination":        {One: "termination", Many: "terminations", Does: "Where wires stop: connectors, rings, flying leads"},
	"breakout":           {One: "breakout", Many: "breakouts", Does: "Where branches meet"},
	"splice":             {One: "splice", Many: "splices", Does: "Where one wire becomes several"},
	"wire":               {One: "wire", Many: "wires", Does: "Each insulated conductor, from one end to the other"},
	"feed":               {One: "feed", Many: "feeds", Does: "Fuses and electronic limits, with the wires on them"},
	"unit":               {One: "unit", Many: "units", Does: "Wires made up first and laid as one"},
	"branch":             {One: "branch", Many: "branches", Does: "Each run of bundle between two places"},
	"branch.via":         {One: "bend of the drawing", Many: "bends of the drawing", Does: "Where the drawing bends it", Order: true},
	"branch.layer":       {One: "layer", Many: "layers", Does: "Its lay-up, from the centre outward", Order: true},
	"branch.cover":       {One: "cover", Many: "covers", Does: "What goes over it, from the inside out", Order: true},
	"branch.as_built":    {One: "measured layer", Many: "measured layers", Does: "What was measured on the board"},
	"branch.aside":       {One: "variant", Many: "variants", Does: "Other ways it could be, to compare with or to come back to"},
	"branch.aside.layer": {One: "layer", Many: "layers", Does: "The lay-up, from the centre outward", Order: true},
	"branch.aside.cover": {One: "cover", Many: "covers", Does: "What goes over it, from the inside out", Order: true},
	"build":              {One: "build", Many: "builds", Does: "The record of each harness that was built, by its serial"},
	"build.shelf":        {One: "figure of the catalogue", Many: "figures it was begun with", Does: "What the catalogue had then"},
	"build.step":         {One: "step", Many: "steps done", Does: "What was ticked at the board, and what it made", Order: true},
	"build.step.what":    {One: "what was made"},
	"build.step.sheet":   {One: "what the sheet had"},
	"build.signed":       {One: "signature", Many: "signatures", Does: "Holds that somebody has passed"},
	"build.reading":      {One: "reading", Many: "readings", Does: "What was measured, layer by layer"},
	"build.wire":         {One: "wire used", Many: "wire used", Does: "How much was taken off each reel"},
	"build.tube":         {One: "sheath measured", Many: "sheaths measured", Does: "Over the sheath, once shrunk"},
	"build.again":        {One: "contact made again", Many: "contacts made again", Does: "How often each was made again"},
	"build.deviation":    {One: "deviation", Many: "deviations", Does: "What was built otherwise than the sheet says"},
	"build.test":         {One: "test", Many: "tests", Does: "What was tested, and what was read"},
	"build.lot":          {One: "lot", Many: "lots", Does: "What each part and reel was taken from"},
	"listed":             {One: "net", Many: "independent list", Does: "What somebody else's list joins, to check against"},
}

// Of is the label of a key. One that has none is called by its name, so that a person can
// still change it; a test fails where that is so.
func Of(table, key string) Label {
	if l, ok := Known(table, key); ok {
		return l
	}
	return Label{Says: key}
}

// Known is the label of a key; false where it has none.
func Known(table, key string) (Label, bool) {
	l, ok := labels[table][key]
	return l, ok
}

// NounOf is the noun of a table; one that has none is called by its name.
func NounOf(table string) Noun {
	if n, ok := nouns[table]; ok {
		return n
	}
	return Noun{One: table, Many: table}
}
