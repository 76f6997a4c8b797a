package report

import (
	"fmt"
	"strings"

	"contralay/model/unit"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Level is how much a finding matters: what cannot be built as it stands, what should
// be looked at, what is only said.
type Level string

// The levels, worst first.
const (
	Stop Level = "stop"
	Warn Level = "warn"
	Note Level = "note"
)

// Control is the rule of a cell that holds what is left out of it: see table.Odd.
const Control = "control character"

// LeftOut is what was done about a text that nothing was taken from.
const LeftOut = "left out"

// Finding is one thing to say about a place in a list.
type Finding struct {
	Level Level
	Rule  string // what kind of thing: "no colour"
	table.Place
	What string // what stands there
	Did  string // what was done about it
	Rows []int  // the rows of the table that it is said of; nil where it is said of its place
}

// String is the finding by itself: "PLACE: LEVEL: RULE: WHAT; DID".
func (f Finding) String() string {
	rows := make([]string, len(f.Rows))
	for i, r := range f.Rows {
		rows[i] = fmt.Sprintf("row %d", r)
	}
	return value.JoinNonEmpty("; ", value.JoinNonEmpty(": ", f.Place.String(), string(f.Level), f.Rule, f.What,
		strings.Join(rows, ", ")), f.Did)
}

// Report is what an import made of its lists and what it found in them.
type Report struct {
	Facts    []string  // what was made, one line each
	Findings []Finding // in the order of the lists

	// what the lists have a place for, filled or not: id, signal, size, specification, colour, current, fuse, length, unit, reserved
	States   map[string]bool
	Taken    map[string]bool            // wires whose specification the lists do not say, by id
	Lengths  map[string]unit.Millimetre // what they say of the length of a wire, by its id
	Counted  map[string]bool            // wires that they give no id: it is the next number
	Notes    map[string][]string        // what is kept as text, by the id of its wire: the pieces of its note
	Kept     map[string]bool            // headings of the columns that are kept in the notes
	Fuses    map[string]string          // what they call the fuse of a wire, by its id
	Cables   map[string]string          // what they call a unit, by its id
	Kinds    map[string]string          // what kind of unit it is: "shielded twisted pair"
	Rows     map[string][]table.Place   // the rows of the lists that tell of a wire, by its id
	Numbered map[string]bool            // terminations whose cavities the import numbered: the lists name none of theirs
	Unsaid   map[string]bool            // terminations that they do not name: called after the file, or by a number
}

// The rules of ends that lists name without a cavity and that become a termination of one cavity, or of
// one for each wire.
const (
	EndWithoutCavity = "end without cavity"
	StudOfWires      = "a stud of several wires"
	DeviceNumbered   = "a device without cavities"
	TextPairs        = "wires that a text pairs"
)

// BareEnds are the ends that lists name without a cavity and that have one in the harness.
func (r *Report) BareEnds() (all []string) {
	for _, f := range r.Findings {
		if f.Rule == EndWithoutCavity || f.Rule == StudOfWires || f.Rule == DeviceNumbered {
			all = append(all, f.What)
		}
	}
	return all
}

// LeavesOut reports whether what the finding shows is not in the harness: a row or a text that was
// left out, or the second of two that contradict each other.
func (f Finding) LeavesOut() bool {
	for _, did := range []string{"left out", "left in the list", "the first is kept", "the rows hold", "the table holds",
		"taken as the name of the harness", "no wire of its own"} {
		if strings.Contains(f.Did, did) && !strings.HasSuffix(f.Did, "in the note") {
			return true
		}
	}
	return false
}

// mostPlaces is how many places a line of the short report names (no source).
const mostPlaces = 6

// Lines is the short report: the facts, then the findings worst first, those of one
// kind on one line with their rows.
func (r Report) Lines() []string {
	lines := append([]string{}, r.Facts...)
	files := map[string]bool{}
	for _, f := range r.Findings {
		files[f.File+"\x00"+f.Sheet] = true
	}
	type group struct {
		first Finding
		whats []string
		n     int
	}
	for _, level := range []Level{Stop, Warn, Note} {
		var groups []*group
		by := map[string]*group{}
		for _, f := range r.Findings {
			if f.Level != level {
				continue
			}
			key := f.Rule + "\x00" + f.Did
			g := by[key]
			if g == nil {
				g = &group{first: f}
				by[key] = g
				groups = append(groups, g)
			}
			if g.n++; g.n <= mostPlaces {
				g.whats = append(g.whats, briefly(f, len(files) > 1))
			}
		}
		for _, g := range groups {
			says := strings.Join(g.whats, ", ")
			if more := g.n - len(g.whats); more > 0 {
				says += fmt.Sprintf(" and %d more", more)
			}
			lines = append(lines, value.JoinNonEmpty("; ", value.JoinNonEmpty(": ", string(level), g.first.Rule, says), g.first.Did))
		}
	}
	return lines
}

// Full is the facts and every finding on a line of its own.
func (r Report) Full() []string {
	lines := append([]string{}, r.Facts...)
	for _, f := range r.Findings {
		lines = append(lines, f.String())
	}
	return lines
}

// briefly is what stands where, the file only where there are several.
func briefly(f Finding, file bool) string {
	where := ""
	f.What = table.Short(f.What)
	switch n := len(f.Rows); {
	case n > 1:
		where = fmt.Sprintf("rows %d to %d", f.Rows[0], f.Rows[n-1])
	case f.Row > 0:
		where = fmt.Sprintf("row %d", f.Row)
	}
	if file {
		where = value.JoinNonEmpty(" ", f.File, f.Sheet, where)
	}
	switch {
	case where == "":
		return f.What
	case f.What == "":
		return where
	}
	return f.What + " (" + where + ")"
}

// Counted is "1 wire", "2 wires".
func Counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
