package wirelist

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Options say what a list does not.
type Options struct {
	Recipe    *Recipe              // nil: every column is found by meaning
	Unit      LengthUnit           // of lengths that state none; "": they are not read
	Spec      string               // of AWG wires that state none; "": AS22759/32
	Metric    string               // of mm² wires that state none; "": ISO 6722 thin
	Sheets    []string             // of workbooks, by name; nil: all
	Catalogue *catalogue.Catalogue // inserts and sizes; nil: the one that comes with the program
	Name      string               // of the harness
}

// importer is one import on its way.
type importer struct {
	opt   Options
	cat   *catalogue.Catalogue
	rep   Report
	terms []*term
	byKey map[string]*term
	items []*item

	groups []group // of wires that are made up together
	count  int     // of items made
	pages  int     // header rows met
	rows   int     // rows that said something about a cavity or a wire
	h      model.Harness

	wireIDs   map[string]bool // of h, once they are all made
	spliceIDs map[string]bool // of h
	units     int             // number of the last C1, C2 …
	kinds     []string        // of the units, in words
	splices   int             // number of the last S1, S2 …
	unknown   int             // branches whose length the lists do not give
}

// term is a termination on its way.
type term struct {
	model.Termination
	index  int
	titled bool // a pin table or a connector column is about it; else only named as an end
	stud   bool // a bolt or a point that several wires are taken to
	place  Place
	pins   []string
	at     map[string]Place // where a cavity was first named
	state  map[string]state
	free   map[string]Place // cavities that a list says are free, and where
	counts []count
}

// item is one row for one cavity or one wire.
type item struct {
	place    Place
	ownID    string
	counted  string // the running number of its row, beside an id of its own
	from, to end
	net      string // folded signal, where a pin table says no far end
	signal   string
	drain    bool // its signal is that of the drain of a shield
	gauge    Gauge
	colour   Colour
	length   model.Opt[unit.Millimetre]
	amps     model.Opt[unit.Ampere]
	fuse     model.Opt[unit.Ampere]
	fuseName string
	notes    []string
	cue      Gauge  // what the row says about a cable it is part of
	cueText  string // where the words stand that said so, if they are in a note
	cable    string // name of its cable
	shield   string // name of its shield, where it has one of its own
	kind     Gauge  // what the heading of the cable column says of it
	order    int    // of the items, as the lists have them
	with     []string
	state    state
	wire     int // index into the wires made, −1 before
	block    int
}

// end is one end of an item: a cavity, a splice, or none.
type end struct {
	term   *term
	pin    string
	splice string
	text   string // as the list has it
}

func (e end) String() string {
	switch {
	case e.splice != "":
		return e.splice
	case e.term == nil || e.pin == "":
		return ""
	}
	return e.term.ID + ":" + e.pin
}

// Import makes a harness and a report of tables.
//
// The error is an *Error: there is no table that names its columns, or a sheet was
// asked for that is not there. Then the harness is empty. Everything else is a finding
// of the report, and the harness passes model.Harness.Check.
func Import(tables []Table, opt Options) (model.Harness, Report, error) {
	im := &importer{opt: opt, cat: opt.Catalogue, byKey: map[string]*term{}, wireIDs: map[string]bool{}, spliceIDs: map[string]bool{}}
	if im.cat == nil {
		cat, err := catalogue.Default()
		if err != nil {
			return model.Harness{}, Report{}, err
		}
		im.cat = cat
	}
	im.rep.States, im.rep.Taken, im.rep.Lengths = map[string]bool{}, map[string]bool{}, map[string]unit.Millimetre{}
	im.defaults()
	tables, err := chosen(tables, opt.Sheets)
	if err != nil {
		return model.Harness{}, Report{}, err
	}
	h := headings{words: vocabulary(), recipe: im.opt.Recipe.ofColumns()}
	for i := range tables {
		if o := slices.IndexFunc(tables[:i], func(t Table) bool { return sameRows(t.Rows, tables[i].Rows) }); o >= 0 && len(tables[i].Rows) > 0 {
			im.say(Warn, "the same table twice", Place{File: tables[i].File, Sheet: tables[i].Sheet}, Place{File: tables[o].File, Sheet: tables[o].Sheet}.String(), "read once")
			continue
		}
		im.table(h, &tables[i])
	}
	if im.pages == 0 {
		return model.Harness{}, Report{}, noHeader(tables)
	}
	if im.rows == 0 {
		return model.Harness{}, Report{}, noRows(tables)
	}
	im.ends()
	im.nets()
	im.cables()
	im.wires()
	im.madeUp()
	im.feeds()
	im.notes()
	im.terminations()
	im.tree()
	im.judge()
	for _, it := range im.items {
		if it.wire >= 0 && it.gauge.Spec == "" {
			im.rep.Taken[im.h.Wires[it.wire].ID] = true
		}
		if it.length.Set && it.wire >= 0 {
			im.rep.Lengths[im.h.Wires[it.wire].ID] = it.length.V
		}
	}
	if opt.Name != "" && !im.h.Head.Name.Set {
		im.h.Head.Name = model.Some(tidy(opt.Name))
	}
	im.facts(tables)
	im.rep.sort(tables)
	return im.h, im.rep, nil
}

// sameRows: every cell of two tables is the same.
func sameRows(a, b []Row) bool {
	return slices.EqualFunc(a, b, func(x, y Row) bool { return x.Line == y.Line && slices.Equal(x.Cells, y.Cells) })
}

// defaults takes what the recipe says where the options say nothing.
func (im *importer) defaults() {
	o := &im.opt
	if r := o.Recipe; r != nil {
		if o.Unit == "" {
			o.Unit = r.Unit
		}
		if o.Spec == "" {
			o.Spec = r.Spec
		}
		if o.Metric == "" {
			o.Metric = r.Metric
		}
	}
	if o.Spec == "" {
		o.Spec = model.Rules{}.Resolve().Spec
	}
	if o.Metric == "" {
		o.Metric = metricSpec
	}
}

// chosen is the tables of the sheets that were asked for.
func chosen(tables []Table, sheets []string) ([]Table, error) {
	if sheets == nil {
		return tables, nil
	}
	var names []string
	var out []Table
	for _, t := range tables {
		if t.Sheet == "" || slices.Contains(sheets, t.Sheet) {
			out = append(out, t)
		}
		if t.Sheet != "" {
			names = append(names, fmt.Sprintf("%q", t.Sheet))
		}
	}
	for _, s := range sheets {
		if !slices.ContainsFunc(tables, func(t Table) bool { return t.Sheet == s }) {
			return nil, &Error{Says: fmt.Sprintf("no sheet is called %q", s), Allowed: joinNonEmpty("", strings.Join(names, ", "))}
		}
	}
	return out, nil
}

func noHeader(tables []Table) error {
	e := &Error{Says: "no row names its columns", Allowed: "a row with two headings or more, such as Pin and Description, or From and To; or columns named by a recipe"}
	if len(tables) > 0 {
		e.File = tables[0].File
	}
	return e
}

func noRows(tables []Table) error {
	return &Error{Place: Place{File: tables[0].File}, Says: "has headings and no row below them that is read", Allowed: "a row or more for each wire or cavity"}
}

// table reads one sheet.
func (im *importer) table(h headings, t *Table) {
	if t.Hidden && !slices.Contains(im.opt.Sheets, t.Sheet) {
		im.say(Warn, "hidden sheet", Place{File: t.File, Sheet: t.Sheet}, "", "left out; named as a sheet it is read")
		return
	}
	im.looks(t)
	parts := h.sideBySide(standing(*t))
	for k := range parts {
		all, over := h.blocks(&parts[k])
		if len(all) == 0 && len(over) > 0 {
			im.say(Note, "sheet without headings", Place{File: t.File, Sheet: t.Sheet, Row: over[0].Line}, "", "left out")
		}
		for _, b := range all {
			im.pages++
			if im.opt.Recipe != nil && im.opt.Recipe.Language != "" {
				b.lang = im.opt.Recipe.Language
			}
			im.block(b, len(all) == 1 && len(parts) == 1)
		}
	}
}

// say enters a finding.
func (im *importer) say(level Level, rule string, at Place, what, did string) {
	im.rep.Findings = append(im.rep.Findings, Finding{level, rule, at, what, did})
}

// named finds or makes the termination of a name.
func (im *importer) named(name string, place Place, titled bool) *term {
	full := key(name)
	id := designator(name)
	short := key(id)
	t := im.byKey[full]
	if t == nil && (full == short || titled) {
		// "Bulkhead" of one list is "Bulkhead, engine side" of another.
		if c := im.byKey[short]; c != nil && (full == short || !c.titled) {
			t = c
		}
	}
	if t == nil {
		for n := 2; im.taken(id); n++ {
			id = fmt.Sprintf("%s-%d", designator(name), n)
		}
		t = &term{index: len(im.terms), place: place, at: map[string]Place{}, state: map[string]state{}, free: map[string]Place{}}
		t.ID = id
		im.terms = append(im.terms, t)
		im.byKey["\x00"+id] = t
	}
	if full != "" && im.byKey[full] == nil {
		im.byKey[full] = t
	}
	if short != "" && im.byKey[short] == nil {
		im.byKey[short] = t
	}
	if name != t.ID && (titled || !t.Name.Set) {
		t.Name = model.Some(name)
	}
	if titled && !t.titled {
		t.titled, t.place = true, place
	}
	return t
}

func (im *importer) taken(id string) bool { return im.byKey["\x00"+id] != nil }

// designator is the id of a connector: its name up to a comma, a bracket or a dash
// between blanks, without colons, blanks as dashes.
func designator(name string) string {
	if first, _, more := strings.Cut(name, " "); more && isDesignator(first) {
		return first // "P7 Dash plug" is P7
	}
	for _, stop := range []string{",", "(", " - ", " – ", ";", "/"} {
		if i := strings.Index(name, stop); i > 0 {
			name = name[:i]
		}
	}
	name = strings.Join(strings.Fields(strings.ReplaceAll(name, ":", " ")), "-")
	const most = 24 // what a label holds (no source)
	if r := []rune(name); len(r) > most {
		name = strings.TrimRight(string(r[:most]), "-")
	}
	if name == "" {
		return "X"
	}
	return name
}

// isDesignator: one to four letters, then one to three digits: "P7", "CONN12".
func isDesignator(s string) bool {
	letters := strings.TrimRight(s, "0123456789")
	digits := len(s) - len(letters)
	return len(letters) >= 1 && len(letters) <= 4 && digits >= 1 && digits <= 3 && strings.Trim(strings.ToUpper(letters), "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}

// pin enters a cavity of a termination.
func (t *term) pin(pin string, s state, place Place) {
	if _, known := t.at[pin]; !known {
		t.at[pin] = place
		t.pins = append(t.pins, pin)
		t.state[pin] = s
	}
	switch s {
	case used:
		t.state[pin] = used
	case spare:
		if t.state[pin] != used {
			t.state[pin] = spare
		}
	default:
		if _, known := t.free[pin]; !known {
			t.free[pin] = place
		}
	}
}
