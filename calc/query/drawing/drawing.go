package drawing

import (
	"contralay/calc/formula/outline"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// Drawing is a harness on its board.
type Drawing struct {
	Branches []Branch // as those of the harness
	Ends     []End
	Joints   []Joint
	Sleeves  []Sleeve
	Labels   []Label
	Pegs     []Peg
	Datum    string // id of the place at (0, 0); "" where nothing is drawn
	Large    bool   // too large to be drawn at full size: it has no pegs
	Keyed    bool   // something of its shape is given in the file
	Low      Point  // what all of it lies within, texts left out
	High     Point
	PegMM    unit.Millimetre
	Notes    []Note
	widths   []unit.Millimetre
	lines    []outline.Line
}

// Point is a point of the board, mm from the datum, x to the right and y up.
type Point = outline.Point

// Note is something to know about the drawing.
type Note struct {
	Where string // the branch or place that it is about
	Says  string
}

// Branch is a branch as it is drawn.
type Branch struct {
	ID       string
	Line     outline.Line    // as drawn: shorter than the branch where it is broken
	LengthMM unit.Millimetre // of the branch
	BundleMM unit.Millimetre // OD of the bundle; 0: not known
	WidthMM  unit.Millimetre // over everything that covers it; a guess where Guess is
	Guess    bool            // its width is not known
	Measured bool            // its length is known
	Zones    [2]unit.Millimetre
	Lay      [2]unit.Millimetre // stations where the lay starts and stops; equal where it has none
	Covers   []Cover
	Bends    []Bend
	Near     string      // its end nearer the datum
	Turn     unit.Degree // how it leaves that end
	Told     bool        // the file says so
	Break    model.Opt[Break]
}

// Cover is where a sheath or another cover of a branch lies.
type Cover struct {
	What     string
	Part     string
	From, To unit.Millimetre // stations
	OverMM   unit.Millimetre // outside; 0: not known
}

// Bend is a bend of a branch as it is drawn.
type Bend struct {
	Station unit.Millimetre // of its middle
	Turn    unit.Degree
	Radius  unit.Millimetre // of its centre line
}

// Break is a stretch that is left out.
type Break struct{ From, To unit.Millimetre } // stations

// Long is how much is left out.
func (b Break) Long() unit.Millimetre { return b.To - b.From }

// Drawn is how far along the drawn line a station of the branch is.
func (b *Branch) Drawn(station unit.Millimetre) unit.Millimetre {
	switch {
	case !b.Measured: // a length that nobody knows is drawn as it is
	case !b.Break.Set || station <= b.Break.V.From:
	case station >= b.Break.V.To:
		station -= b.Break.V.Long()
	default:
		station = b.Break.V.From
	}
	return max(0, min(station, b.Line.Length()))
}

// At is where a station of the branch is drawn, and the heading there.
func (b *Branch) At(station unit.Millimetre) (Point, unit.Degree) { return b.Line.At(b.Drawn(station)) }

// Part is the drawn line from one station to another.
func (b *Branch) Part(from, to unit.Millimetre) outline.Line {
	return b.Line.Part(b.Drawn(from), b.Drawn(to))
}

// Peg is a peg of the board, numbered from 1.
type Peg struct {
	No     int
	At     Point
	Branch int
}

// mm, common practice, no source: what is drawn where nobody gave a figure.
const (
	plainPeg   unit.Millimetre = 6
	plainRoom  unit.Millimetre = 30  // between branches
	unmeasured unit.Millimetre = 100 // of a branch whose length is not known
	thin       unit.Millimetre = 4   // of a branch whose width is not known
	longest    unit.Millimetre = 4800
)

// Of draws a harness. A branch that is longer than the board, or than a page may be, is broken.
func Of(s *sheet.Sheet) Drawing {
	d := Drawing{PegMM: s.H.Board.PegMM.Or(plainPeg), Branches: make([]Branch, len(s.H.Branches))}
	if len(s.H.Branches) == 0 {
		return d
	}
	t, names := tree(s, &d)
	p := fitted(s, t, &d)
	d.Datum = names[p.Datum]
	for i := range d.Branches {
		b := &d.Branches[i]
		b.Line, b.Near, b.Turn, b.Told = p.Lines[i], names[p.Near[i]], p.Turns[i], t.Runs[i].Told
		d.lines, d.widths = append(d.lines, p.Lines[i]), append(d.widths, d.Branches[i].WidthMM)
	}
	for i := range s.H.Terminations {
		d.end(s, i)
	}
	for i := range s.H.Breakouts {
		d.joint(s, i)
	}
	for i := range s.H.Splices {
		d.sleeve(s, i)
	}
	d.labels(s)
	if !d.Large {
		d.pegs()
	}
	d.bounds()
	d.notes(s, p)
	return d
}

// tree is a harness as quantities alone, with the names of its places. A termination comes
// before a breakout, each in the order of the file.
func tree(s *sheet.Sheet, d *Drawing) (outline.Tree, []string) {
	t := outline.Tree{Datum: -1, Room: plainRoom}
	var names []string
	at := map[string]int{}
	for i := range s.H.Terminations {
		at[s.H.Terminations[i].ID] = len(names)
		names = append(names, s.H.Terminations[i].ID)
	}
	for i := range s.H.Breakouts {
		at[s.H.Breakouts[i].ID] = len(names)
		names = append(names, s.H.Breakouts[i].ID)
	}
	t.Places = len(names)
	if k, ok := at[s.H.Board.Datum.V]; ok && s.H.Board.Datum.Set {
		t.Datum = k
	}
	for i := range s.H.Branches {
		d.branch(s, i)
		b, mb := &d.Branches[i], &s.H.Branches[i]
		r := outline.Run{From: at[mb.From], To: at[mb.To], Length: b.LengthMM, Width: b.WidthMM, Turn: mb.LeavesDeg.V,
			Told: mb.LeavesDeg.Set}
		for _, v := range b.Bends {
			r.Bends = append(r.Bends, outline.Bend{At: v.Station, Turn: v.Turn, Radius: v.Radius})
		}
		d.Keyed = d.Keyed || mb.LeavesDeg.Set || len(mb.Vias) > 0
		t.Runs = append(t.Runs, r)
	}
	return t, names
}
