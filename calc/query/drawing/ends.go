package drawing

import (
	"contralay/calc/formula/label"
	"contralay/calc/query/lists"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue/shell"
	"contralay/model/unit"
)

// End is a termination as it is drawn. Its branch ends at its datum, and it lies on from there.
type End struct {
	Term     int
	ID       string
	Name     string
	At       Point
	Heading  unit.Degree     // the way its branch comes in
	WideMM   unit.Millimetre // of the shell
	FrontMM  unit.Millimetre // from the datum on to its mating face
	BackMM   unit.Millimetre // from the datum back to the rear of its shell; negative: that lies beyond the datum
	BootMM   unit.Millimetre // length of its boot, which lies behind the shell; 0: it has none
	Boot     string
	Guess    bool // its size is not known
	Datum    string
	Clock    model.Opt[int] // the key, hours seen from the wire side
	BootAt   model.Opt[int] // where a boot with an angle points
	Branches int            // how many meet in it
}

// Joint is a breakout as it is drawn.
type Joint struct {
	ID, Name   string
	At         Point
	Transition string
	WideMM     unit.Millimetre // of the thickest branch at it
}

// Sleeve is a splice as it is drawn.
type Sleeve struct {
	ID, Part string
	At       Point
	Heading  unit.Degree
	LongMM   unit.Millimetre
	WideMM   unit.Millimetre
	Branch   string          // that it lies along; "" at the centre of its breakout
	Station  unit.Millimetre // of its middle
}

// Label is a marker sleeve as it is drawn.
type Label struct {
	Of      string
	Text    []string
	Branch  int
	From    unit.Millimetre // stations
	To      unit.Millimetre
	WideMM  unit.Millimetre
	OnHours int
}

// sizeOf is how wide and long a termination is, from its mating face back: as a plug of series III of its shell.
func sizeOf(s *sheet.Sheet, t *model.Termination) (wide, long unit.Millimetre, known bool) {
	ins, ok := s.Cat.Insert(t.Insert.V)
	if sh, known := shell.Of(ins.Shell); ok && known {
		return sh.PlugMM, t.PartMM.Or(shell.LongestPlug), true
	}
	return anyWide, t.PartMM.Or(anyLong), false
}

// end draws a termination at the end of the first branch that it has.
func (d *Drawing) end(s *sheet.Sheet, i int) {
	t := &s.H.Terminations[i]
	meet := s.Index.Meeting(t.ID)
	if len(meet) == 0 {
		d.note(t.ID, t.ID+" has no branch, so it is not on the drawing")
		return
	}
	e := End{Term: i, ID: t.ID, Name: t.Name.V, Clock: t.Clock, Boot: t.Boot.V, Branches: len(meet), Datum: string(t.Datum.V)}
	b := &d.Branches[meet[0]]
	if s.H.Branches[meet[0]].To == t.ID {
		e.At, e.Heading = b.Line.At(b.Line.Length())
	} else {
		var away unit.Degree
		e.At, away = b.Line.At(0)
		e.Heading = away + 180
	}
	wide, long, known := sizeOf(s, t)
	e.WideMM, e.Guess = wide, !known
	boot, booted := s.Cat.Boot(t.Boot.V)
	if booted {
		e.BootMM = boot.LengthMM
		if boot.Shape != "straight" {
			e.BootAt = t.BootClock
		}
	}
	front := long
	switch at, ok := offer.DatumAt(s, i, t.Datum.V); {
	case ok:
		front = at
	case t.Datum.V == model.DatumBootLip:
		front = long + e.BootMM
	}
	e.FrontMM, e.BackMM = front, long-front
	d.Ends = append(d.Ends, e)
}

// tail is how far back from the datum the boot of an end reaches.
func (e *End) tail() unit.Millimetre { return max(0, e.BackMM+e.BootMM) }

// joint draws a breakout.
func (d *Drawing) joint(s *sheet.Sheet, i int) {
	br := &s.H.Breakouts[i]
	meet := s.Index.Meeting(br.ID)
	if len(meet) == 0 {
		d.note(br.ID, br.ID+" has no branch, so it is not on the drawing")
		return
	}
	j := Joint{ID: br.ID, Name: br.Name.V, Transition: br.Transition.V}
	for _, k := range meet {
		j.WideMM = max(j.WideMM, d.Branches[k].WidthMM)
	}
	b := &d.Branches[meet[0]]
	station := unit.Millimetre(0)
	if s.H.Branches[meet[0]].To == br.ID {
		station = b.Line.Length()
	}
	j.At, _ = b.Line.At(station)
	d.Joints = append(d.Joints, j)
}

// sleeve draws a splice, where its part lies along its branch.
func (d *Drawing) sleeve(s *sheet.Sheet, i int) {
	sp := &s.H.Splices[i]
	out := Sleeve{ID: sp.ID, Part: s.Splices[i].Part, LongMM: 20, WideMM: 5}
	if p, ok := s.Cat.Splice(out.Part); ok {
		out.LongMM, out.WideMM = p.LengthMM, p.OverMM
	}
	k, along := s.Index.Branch[sp.Toward.V]
	if !along {
		meet := s.Index.Meeting(sp.At)
		if len(meet) == 0 {
			return
		}
		k = meet[0]
	}
	b, mb := &d.Branches[k], &s.H.Branches[k]
	station := sp.OffsetMM.V
	if !along {
		station = 0
	} else {
		out.Branch = mb.ID
	}
	if mb.To == sp.At {
		station = b.LengthMM - station
	}
	out.Station = station
	out.At, out.Heading = b.At(station)
	d.Sleeves = append(d.Sleeves, out)
}

// labels draws the marker sleeve of each end, off the tail of its boot.
func (d *Drawing) labels(s *sheet.Sheet) {
	for _, l := range lists.Labels(s) {
		for _, e := range d.Ends {
			if e.ID != l.Of {
				continue
			}
			k := s.Index.Meeting(e.ID)[0]
			b := &d.Branches[k]
			from, to := e.tail()+label.OffLeast, e.tail()+label.OffMost
			if to > b.LengthMM {
				from, to = max(0, b.LengthMM/2-12.5), min(b.LengthMM, b.LengthMM/2+12.5)
			}
			if s.H.Branches[k].To == e.ID {
				from, to = b.LengthMM-to, b.LengthMM-from
			}
			d.Labels = append(d.Labels, Label{Of: l.Of, Text: l.Text, Branch: k, From: from, To: to,
				WideMM: max(l.OverMM, b.WidthMM), OnHours: l.OnHours})
		}
	}
}
