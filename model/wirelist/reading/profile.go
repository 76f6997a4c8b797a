package reading

import (
	"slices"
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
	add(&p.cavities, isCavities(cell))
	add(&p.ends, isEnd(cell))
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
	add(&p.contacts, isContact(cell))
	if _, ok := value.ParseLength(cell, "", mark); ok {
		p.lengths++
	}
	if _, ok := value.ParseCurrent(strings.TrimLeft(cell, "~≈<> "), false, mark); ok && !number {
		p.currents++
	}
	add(&p.studs, isStud(cell))
}

// most reports whether n of the cells are seven in ten or more.
func (p *profile) most(n int) bool { return p.filled > 0 && 10*n >= 7*p.filled }

// all reports whether n are all of the cells, and one or more.
func (p *profile) all(n int) bool { return p.filled > 0 && n == p.filled }

// coloured reports whether every cell is a colour, or says that there is no wire.
func (p *profile) coloured() bool { return p.colours > 0 && p.colours+p.free == p.filled }

// unique reports whether hardly a cell comes twice.
func (p *profile) unique() bool { return p.filled > 0 && 10*p.distinct >= 9*p.filled }

// isCavities reports whether a cell is the name of a cavity, or of several.
func isCavities(cell string) bool {
	if name.IsCavity(cell) || len(cell) <= 2 && !(len(cell) == 2 && strings.ContainsAny(cell[1:], "+-")) {
		return true
	}
	pins := name.SplitPins(cell)
	if len(pins) == 0 {
		return false
	}
	return !slices.ContainsFunc(pins, func(p string) bool { return !name.IsCavity(p) && !name.LooksLikeRange(p) })
}

// isEnd reports whether a cell names a connector and, behind a colon, a cavity of it.
func isEnd(cell string) bool {
	connector, pin, ok := name.SplitEnd(cell)
	if ok && strings.Contains(table.Fold(cell), " pin ") && name.IsCavity(pin) {
		return true
	}
	return ok && strings.Contains(cell, ":") && pin != "" && len(pin) <= 8 && strings.ContainsFunc(connector, func(r rune) bool {
		return r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' || r > 0x7f
	})
}

// isContact reports whether a cell is a size of contacts: "#20", "22D", "size 16", "20".
func isContact(cell string) bool {
	f := strings.TrimSpace(strings.TrimPrefix(strings.TrimPrefix(table.Fold(cell), "size"), "#"))
	return slices.Contains([]string{"22", "22d", "22m", "23", "20", "20hd", "16", "12", "10", "8", "4", "0"}, strings.TrimLeft(f, "# "))
}

// isStud reports whether a cell is the thread of a bolt that a lug fits, "M8".
func isStud(cell string) bool {
	return slices.Contains([]string{"m3", "m4", "m5", "m6", "m8", "m10", "m12"}, table.Fold(cell))
}
