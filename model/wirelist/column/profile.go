package column

import (
	"strings"

	"contralay/model/wirelist/doingword"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Profile counts what the cells of one column are. A cell may be several things.
type Profile struct {
	Filled   int // with something in it, dashes left out
	Distinct int
	Cavities int // "7", "A12", and lists and ranges of them
	Ends     int // a connector and a cavity, "X9:B04"
	Colours  int // words of colours; digits alone do not count
	Sizes    int // sizes of wire; a number alone counts where wire is made in it
	Units    int // of these the ones with their unit
	Contacts int // "#20", "22D", "20"
	Lengths  int // with their unit
	Currents int // with their unit
	Numbers  int // a number alone
	Ids      int // short, one word, with a digit
	Free     int // of these the ones that are no colour
	States   int // spare, not connected …
	Changes  int // add, remove …
	Words    int // letters and no digit
	Prose    int // four words or more
	Long     int // more than three letters, or two words
	Studs    int // "M8", the bolt that a lug fits
	Sized    int // a size with its unit and a colour, or with its unit alone
	Specs    int // a specification of wire, or a cable
}

// MostLooked is how many rows a profile looks at; more say nothing new (no source).
const MostLooked = 400

// Of looks at the cells of one column of some rows; key says what the short forms of colours in them mean.
func Of(rows []table.Row, col int, lang string, mark value.Mark, key huekey.ColourKey) Profile {
	var p Profile
	seen, folded := map[string]Profile{}, map[string]bool{} // what each text is: many cells have the same
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if col >= len(r.Cells) || value.IsNothing(r.Cells[col]) || shape.IsText(r) || value.IsDitto(r.Cells[col]) {
			continue
		}
		if _, first := r.Filled(); signoff.IsTotal(first) || signoff.Is(r) {
			continue
		}
		one, known := seen[r.Cells[col]]
		if !known {
			one.look(r.Cells[col], lang, mark, key)
			seen[r.Cells[col]] = one
			folded[table.Fold(r.Cells[col])] = true
		}
		p.add(&one)
	}
	p.Distinct = len(folded)
	return p
}

// add takes in what another profile counts.
func (p *Profile) add(o *Profile) {
	p.Filled += o.Filled
	p.Cavities += o.Cavities
	p.Ends += o.Ends
	p.Colours += o.Colours
	p.Sizes += o.Sizes
	p.Units += o.Units
	p.Contacts += o.Contacts
	p.Lengths += o.Lengths
	p.Currents += o.Currents
	p.Numbers += o.Numbers
	p.Ids += o.Ids
	p.Free += o.Free
	p.States += o.States
	p.Changes += o.Changes
	p.Words += o.Words
	p.Prose += o.Prose
	p.Long += o.Long
	p.Studs += o.Studs
	p.Sized += o.Sized
	p.Specs += o.Specs
}

// look takes in one cell.
func (p *Profile) look(cell, lang string, mark value.Mark, key huekey.ColourKey) {
	p.Filled++
	digits := value.HasDigit(cell)
	number := figures.Are(cell)
	add := func(n *int, is bool) {
		if is {
			*n++
		}
	}
	state := name.StateOf(cell) != name.Used || name.IsUnknown(cell)
	add(&p.States, state)
	add(&p.Changes, !digits && doingword.IsChange(table.Fold(cell)))
	add(&p.Numbers, number)
	add(&p.Cavities, name.IsCavities(cell))
	add(&p.Ends, name.IsEnd(cell))
	add(&p.Words, !digits)
	add(&p.Long, len(cell) > 3 || strings.Contains(cell, " "))
	add(&p.Prose, len(strings.Fields(cell)) > 3)
	add(&p.Ids, digits && len(cell) <= 12 && !strings.Contains(cell, " "))
	if _, ok := value.ParseColour(key.InEnglish(cell), lang); ok && !digits {
		p.Colours++
	} else if state {
		p.Free++
	}
	if g, ok := value.ParseGauge(cell, value.BareAWG, mark); ok {
		add(&p.Sizes, g.Size != "" && (!number || shape.IsMadeSize(cell) || strings.ContainsAny(cell, ".,")))
		add(&p.Units, g.Size != "" && !number)
		add(&p.Specs, g.Spec != "" || g.IsCable() || g.Size != "" && !number)
	} else if g, rest := value.CutSpec(cell); g.Spec != "" && rest == "" {
		p.Specs++
	}
	_, both := value.SizeAndColour(key.InEnglish(cell), value.BareAWG, lang, mark)
	add(&p.Sized, both || value.SizeWithin(cell, mark) != "")
	add(&p.Contacts, name.IsContactSize(cell))
	if _, ok := value.ParseLength(cell, "", mark); ok {
		p.Lengths++
	}
	if _, ok := value.ParseCurrent(strings.TrimLeft(cell, "~≈<> "), false, mark); ok && !number {
		p.Currents++
	}
	add(&p.Studs, name.IsThread(cell))
}

// Most reports whether n of the cells are seven in ten or more.
func (p *Profile) Most(n int) bool { return p.Filled > 0 && 10*n >= 7*p.Filled }

// All reports whether n are all of the cells, and one or more.
func (p *Profile) All(n int) bool { return p.Filled > 0 && n == p.Filled }

// Coloured reports whether every cell is a colour, or says that there is no wire.
func (p *Profile) Coloured() bool { return p.Colours > 0 && p.Colours+p.Free == p.Filled }

// Unique reports whether hardly a cell comes twice.
func (p *Profile) Unique() bool { return p.Filled > 0 && 10*p.Distinct >= 9*p.Filled }
