package reading

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// profile counts what the cells of one column are. A cell may be several things.
type profile struct {
	filled   int // with something in it, dashes left out
	distinct int
	cavities int // "7", "A12", and lists and ranges of them
	ends     int // a connector and a cavity, "X9:B04"
	colours  int // words of colours; digits alone do not count
	sizes    int // sizes of wire; a number alone counts where wire is made in it
	units    int // of these the ones with their unit
	contacts int // "#20", "22D", "20"
	lengths  int // with their unit
	currents int // with their unit
	numbers  int // a number alone
	ids      int // short, one word, with a digit
	free     int // of these the ones that are no colour
	states   int // spare, not connected …
	words    int // letters and no digit
	prose    int // four words or more
	long     int // more than three letters, or two words
	studs    int // "M8", the bolt that a lug fits
	sized    int // a size with its unit and a colour, or with its unit alone
	specs    int // a specification of wire, or a cable
}

// mostLooked is how many rows a profile looks at; more say nothing new (no source).
const mostLooked = 400

// profileOf looks at the cells of one column of some rows.
func profileOf(rows []table.Row, col int, lang string, mark value.Mark) profile {
	var p profile
	seen := map[string]bool{}
	for _, r := range rows[:min(len(rows), mostLooked)] {
		if col >= len(r.Cells) || value.IsNothing(r.Cells[col]) || shape.IsText(r) {
			continue
		}
		if _, first := r.Filled(); name.IsTotal(first) || shape.IsSignOff(r) {
			continue
		}
		p.look(r.Cells[col], lang, mark)
		seen[table.Fold(r.Cells[col])] = true
	}
	p.distinct = len(seen)
	return p
}

// look takes in one cell.
func (p *profile) look(cell, lang string, mark value.Mark) {
	p.filled++
	digits := strings.ContainsAny(cell, "0123456789")
	number := strings.Trim(cell, "0123456789.,") == ""
	add := func(n *int, is bool) {
		if is {
			*n++
		}
	}
	state := name.StateOf(cell) != name.Used || name.IsUnknown(cell)
	add(&p.states, state)
	add(&p.numbers, number)
	add(&p.cavities, name.IsCavities(cell))
	add(&p.ends, name.IsEnd(cell))
	add(&p.words, !digits)
	add(&p.long, len(cell) > 3 || strings.Contains(cell, " "))
	add(&p.prose, len(strings.Fields(cell)) > 3)
	add(&p.ids, digits && len(cell) <= 12 && !strings.Contains(cell, " "))
	if _, ok := value.ParseColour(cell, lang); ok && !digits {
		p.colours++
	} else if state {
		p.free++
	}
	if g, ok := value.ParseGauge(cell, value.BareAWG, mark); ok {
		add(&p.sizes, g.Size != "" && (!number || shape.IsMadeSize(cell) || strings.ContainsAny(cell, ".,")))
		add(&p.units, g.Size != "" && !number)
		add(&p.specs, g.Spec != "" || g.IsCable() || g.Size != "" && !number)
	} else if g, rest := value.CutSpec(cell); g.Spec != "" && rest == "" {
		p.specs++
	}
	_, both := value.SizeAndColour(cell, value.BareAWG, lang, mark)
	add(&p.sized, both || value.SizeWithin(cell, mark) != "")
	add(&p.contacts, name.IsContactSize(cell))
	if _, ok := value.ParseLength(cell, "", mark); ok {
		p.lengths++
	}
	if _, ok := value.ParseCurrent(strings.TrimLeft(cell, "~≈<> "), false, mark); ok && !number {
		p.currents++
	}
	add(&p.studs, name.IsThread(cell))
}

// most reports whether n of the cells are seven in ten or more.
func (p *profile) most(n int) bool { return p.filled > 0 && 10*n >= 7*p.filled }

// all reports whether n are all of the cells, and one or more.
func (p *profile) all(n int) bool { return p.filled > 0 && n == p.filled }

// coloured reports whether every cell is a colour, or says that there is no wire.
func (p *profile) coloured() bool { return p.colours > 0 && p.colours+p.free == p.filled }

// unique reports whether hardly a cell comes twice.
func (p *profile) unique() bool { return p.filled > 0 && 10*p.distinct >= 9*p.filled }
