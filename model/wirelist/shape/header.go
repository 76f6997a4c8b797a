package shape

import (
	"slices"

	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Column is one column of a block.
type Column struct {
	Field     name.Field
	Of        string           // the device that its heading names, "ECU" of "ECU pin"; "" where it names none
	Head      string           // its heading as it stands in the list
	Unit      value.LengthUnit // that its heading states
	Milli     bool             // its heading states mA
	Bare      value.Bare       // how a whole number in a gauge column is read
	Said      bool             // its heading says so
	Section   bool             // its heading says that it is a cross section, in no unit
	Whole     bool             // some size is a number alone
	Counts    bool             // of colours: a number without unit behind one is no size
	Elsewhere bool             // other tables of the sheet alone say how its whole numbers are read
	Sizes     bool             // it is headed as wires and holds sizes
	Against   bool             // its cells are what another heading says
	Misspelt  bool             // its heading is one slip away from a word that is known
	Given     bool             // a person said what it means
	Group     bool             // of a connector: it says which part of it, and stands behind the name of the other column
	Slashed   bool             // of cavities: "3/A" is one
	Numbered  bool             // of cavities: each cell says the number and the name of one, "3 CLK", "CLK (3)"
	Alias     bool             // it says how another calls the cavity beside it
	Headed    bool             // the heading of the table names the device of its cavities
	Vague     bool             // of cavities: its heading is taken for their device, and could be a word for cavities
	Guessed   bool             // its cells alone say what it is, and they could say something else
	Far       bool             // of names: they say the far end too
	CoreSize  bool             // of the kinds of cables: each cell says the size of the cores within
	Carried   bool             // it stands in the first row of each group alone, and is of all its rows
	Told      bool             // of far ends: its cells tell what to do with the wire
	Done      bool             // what is done with a wire that is taken nowhere, and remarks on where it is taken
	Alone     bool             // of colours: they tell the wires of a plug apart, which has no names of cavities
	OfEnd     string           // the end of the wire that it says something of, by its heading; "" where it is of the wire
	Fuses     bool             // of cavities: each is a fuse and is called so
	InCell    bool             // of cavities: each cell names the connector too, "X9:B04"
	Landed    bool             // of cavities between two ends: wires end in them, and a side that says nothing has none

	Measured int // the column of its unit; 0 where there is none

	Running bool // it is taken for the number of the row
	Spared  bool // its heading is known, and nothing here takes what it says
	several bool // of a connector: it names the device, the next column which of its plugs
	known   bool // its heading is
	weak    bool // its heading is a word of one or two letters
}

// At is how a finding names the column.
func At(cols []Column, i int) string {
	if i < len(cols) && cols[i].Head != "" {
		return cols[i].Head
	}
	return table.ColumnLetter(i)
}

// Headings is what a table is read with: the headings that are known, and what a person said of
// the columns of this one, which may be nil.
type Headings struct {
	Words  map[string]name.Meaning
	Recipe *name.Recipe
	NoEnds bool // a column of signals is one that a row can hang on

	Colours huekey.ColourKey // what the lists say that their short forms of colours mean
}

// IsHead reports whether a row is headings that are known: two cells or more with a known
// meaning, half of those that are filled or more, and one that a wire could hang on. Words of one or
// two letters, which could be cavities, count only beside two others, or as a from and a to.
func (h Headings) IsHead(r table.Row) bool {
	_, _, ok := h.header(r)
	return ok
}

// header reads a row as headings.
func (h Headings) header(r table.Row) (cols []Column, lang string, ok bool) {
	if h.Recipe == nil && (HasNumber(r) || signoff.Is(r)) {
		return nil, "", false
	}
	filled, strong, keys := 0, 0, 0
	cols, lang, weak := h.meanings(r)
	for _, c := range cols {
		if c.Head != "" {
			filled++
		}
		if c.known && !c.weak {
			strong++
			keys += isKey(c.Field)
			if h.NoEnds && c.Field == name.FieldSignal {
				keys++
			}
		}
	}
	if weak[name.FieldFrom] && weak[name.FieldTo] {
		strong, keys = strong+2, keys+1
	}
	if strong < 2 && !slices.ContainsFunc(cols, func(c Column) bool { return h.Words[endsWith(c.Head)].Field == name.FieldPin }) {
		return nil, "", false // most rows: nothing could make up for it
	}
	if h.devicePins(cols) {
		strong, keys = strong+2, keys+1
	}
	if filled < 2 || strong < 2 || keys == 0 && !weak[name.FieldNumber] || 2*(strong+len(weak)) < filled {
		return nil, "", false
	}
	h.Sides(cols)
	return cols, lang, true
}

// meanings looks up each heading of a row by itself. lang is the language that most of them are of;
// weak are the fields of words of one or two letters.
func (h Headings) meanings(r table.Row) (cols []Column, lang string, weak map[name.Field]bool) {
	votes := map[string]int{}
	cols, weak = make([]Column, len(r.Cells)), map[name.Field]bool{}
	for i, cell := range r.Cells {
		cols[i] = Column{Field: name.FieldKeep, Head: cell}
		if cell == "" {
			continue
		}
		m, known := h.mean(cell, &cols[i])
		if !known {
			continue
		}
		cols[i].Field, cols[i].known, cols[i].weak = m.Field, true, m.Weak
		if m.Weak {
			weak[m.Field] = true
		}
		if m.Lang != "" {
			votes[m.Lang]++
		}
	}
	for l, n := range votes {
		if lang == "" || n > votes[lang] || n == votes[lang] && l < lang {
			lang = l
		}
	}
	return cols, lang, weak
}

var figures = signs.Of("0123456789.,") // of numbers

// HasNumber reports whether a cell is a number alone, which no heading is. It spares most rows the
// looking up.
func HasNumber(r table.Row) bool {
	return slices.ContainsFunc(r.Cells, func(c string) bool { return c != "" && c[0] <= '9' && figures.Are(c) })
}

// isKey is 1 for a column that a row can hang on, else 0.
func isKey(f name.Field) int {
	if slices.Contains([]name.Field{name.FieldWire, name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldRun,
		name.FieldPin}, f) {
		return 1
	}
	return 0
}

// Known reports whether the heading of a column has a meaning in the vocabulary or the recipe.
func (c Column) Known() bool { return c.known }

// Know makes the meaning of a column one that its heading says.
func (c *Column) Know() { c.known = true }

// Weak reports whether its heading is a word of one or two letters, which says little alone.
func (c Column) Weak() bool { return c.weak }
