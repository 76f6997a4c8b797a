package draft

import (
	"fmt"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
)

// Options say what a list does not.
type Options struct {
	Recipe    *name.Recipe         // nil: every column is found by meaning
	Unit      value.LengthUnit     // of lengths that state none; "": they are not read
	Spec      string               // of AWG wires that state none; "": AS22759/32
	Metric    string               // of mm² wires that state none; "": ISO 6722 thin
	Sheets    []string             // of workbooks, by name; nil: all
	Catalogue *catalogue.Catalogue // inserts and sizes; nil: the one that comes with the program
	Name      string               // of the harness
	NoEnds    bool                 // rows that name no cavity and no end are wires too, by their ids or signals: to compare them
}

// Importer is one import on its way.
type Importer struct {
	Opt   Options
	Cat   *catalogue.Catalogue
	Rep   report.Report
	Terms []*Term
	ByKey map[string]*Term
	Items []*Item

	Overall Overall // the size that a text of the sheet in hand says of all its wires

	Hue     Default // the colour, where another text than that of Default says it
	Default Default // the size and the colour that a text of the sheet in hand says of the rows that say none

	Squares bool // the sizes of the sheet in hand are cross sections, as far as its tables say

	Keys    map[string]huekey.ColourKey // what the lists say that their short forms of colours mean, by their file
	Colours huekey.ColourKey            // of the table in hand

	Groups []Group // of wires that are made up together
	Count  int     // of items made
	Pages  int     // header rows met
	Rows   int     // rows that said something about a cavity or a wire
	H      model.Harness

	WireIDs   map[string]bool // of h, once they are all made
	SpliceIDs map[string]bool // of h
	Units     int             // number of the last C1, C2 …
	Kinds     []string        // of the units, in words
	Splices   int             // number of the last S1, S2 …
	Unknown   int             // branches whose length the lists do not give
	nth       map[string]int  // the last number behind a designator that several names have
	named     map[string]keys // of the names of terminations: a list says each of them many times
}

// Overall is a size that a text says of all wires of its sheet, and the rows that took it; "" where none does.
type Overall struct {
	Size, Text string
	At         table.Place
	Rows       []table.Row
}

// Default is what a text says of the wires of its sheet whose rows do not say it, and how many rows took it.
type Default struct {
	Size   string
	Colour value.Colour
	Text   string
	At     table.Place
	Mark   value.Mark // how its sheet writes decimals
	Rows   int
	Named  []table.Row // the rows that took it of a text that does not say that rows may differ
	Except *Exception  // the wires that have another size; nil for none
	Others []Exception // those that have another size or colour, by their names
}

// Exception is the wires of which a text says that theirs is not the size of all others: words of their rows, or their cavities, and
// then words of the title above these.
type Exception struct {
	Words, Pins []string
	Size        string // "" where it does not say theirs
	Colour      value.Colour
}

// Say enters a finding.
func (im *Importer) Say(level report.Level, rule string, at table.Place, what, did string) {
	im.Rep.Findings = append(im.Rep.Findings, report.Finding{Level: level, Rule: rule, Place: at, What: what, Did: did})
}

// Doubt enters a finding that is said of some rows of a table, each of which could be read wrong.
func (im *Importer) Doubt(rule string, at table.Place, what, did string, rows []table.Row) {
	f := report.Finding{Level: report.Warn, Rule: rule, Place: at, What: what, Did: did}
	for _, r := range rows {
		f.Rows = append(f.Rows, r.Line)
	}
	im.Rep.Findings = append(im.Rep.Findings, f)
}

// keys are what a termination of some name is found by, and the id that it would have; behind is its id where the name is a title that
// names the thing which has the connector first, "" of others.
type keys struct{ full, id, short, behind string }

// keysOf gives the keys of a name.
func (im *Importer) keysOf(called string) keys {
	k, ok := im.named[called]
	if !ok {
		k = keys{full: name.Key(called), id: name.Designator(called), behind: titleline.BehindThing(called)}
		k.short = name.Key(k.id)
		if im.named == nil {
			im.named = map[string]keys{}
		}
		im.named[called] = k
	}
	return k
}

// Named finds or makes the termination of a name.
func (im *Importer) Named(called string, place table.Place, titled bool) *Term {
	k := im.keysOf(called)
	full, id, short := k.full, k.id, k.short
	if titled && k.behind != "" {
		id, short = k.behind, name.Key(k.behind)
	}
	t := im.ByKey[full]
	if t == nil && (full == short || titled) {
		// "Bulkhead" of one list is "Bulkhead, engine side" of another.
		if c := im.ByKey[short]; c != nil && (full == short || !c.Titled) {
			t = c
		}
	}
	if t == nil {
		t = im.made(id, place)
	}
	if full != "" && im.ByKey[full] == nil {
		im.ByKey[full] = t
	}
	if short != "" && im.ByKey[short] == nil {
		im.ByKey[short] = t
	}
	if called != t.ID && (titled || !t.Name.Set) {
		t.Name = model.Some(called)
	}
	if titled && !t.Titled {
		t.Titled, t.Place = true, place
	}
	return t
}

// Another makes one more termination of a name that a connector has already; the name goes on meaning that connector.
func (im *Importer) Another(called string, place table.Place) *Term {
	t := im.made(im.keysOf(called).id, place)
	if called != t.ID {
		t.Name = model.Some(called)
	}
	return t
}

// made makes a termination with an id, or with a number behind it where another has it.
func (im *Importer) made(id string, place table.Place) *Term {
	own := id
	for n := max(im.nth[own], 2); im.Taken(id); n++ {
		id = fmt.Sprintf("%s-%d", own, n)
		if im.nth == nil {
			im.nth = map[string]int{}
		}
		im.nth[own] = n
	}
	t := &Term{Index: len(im.Terms), Place: place, At: map[string]table.Place{}, State: map[string]name.State{}}
	t.ID = id
	im.Terms = append(im.Terms, t)
	im.ByKey["\x00"+id] = t
	return t
}

// Taken reports whether a termination has the id.
func (im *Importer) Taken(id string) bool { return im.ByKey["\x00"+id] != nil }
