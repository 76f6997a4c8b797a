package record

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Record is what the record of a serial says.
type Record struct {
	Serial   string
	Number   string // of the harness
	Name     string
	Revision string // it was built from
	SheetAt  string // revision of the sheet as it is now
	Begun    string // day
	Ended    string // day and time of the last tick that counts; "" where something is open
	GoesBy   []string

	Tests      []Tested    // in the order of the run, each as its last test has it
	Built      []Worker    // who has ticked work, the most first
	Inspected  []Inspected // holds, in the order of the run
	Layers     []Layer     // every layer of every branch, measured or not
	Tubes      []Tube
	Deviations []model.Deviation // what was built otherwise, concessions among them
	Lots       []model.Lot
	Again      []model.Again

	MassG  model.Opt[unit.Gram] // on the scale
	SheetG model.Opt[unit.Gram] // of the bundles by the sheet, without covers; unset where one is not known

	Minutes []Spent  // what was done of it, where that is known
	Open    []string // what stands against a certificate, in words; empty where nothing does
}

// Tested is one test: what it must read, what it read last, on what, by whom.
type Tested struct {
	Hold   string // the step it is of: "ring out bare", "samples"
	What   string // what is tested
	Check  run.Check
	Result run.Result
	Read   model.Opt[float64] // in the unit of the check
	Fault  string             // what was wrong; "" for nothing
	Times  int                // how often it was tested
	On     Instrument
	At, By string
	Name   string // of the person; "" where the shop's list has none
}

// Instrument is what a test was read on.
type Instrument struct {
	catalogue.Instrument      // its ID alone where the shop's list does not have it
	Known                bool // it is in the shop's list
	Overdue              bool // its calibration had ended on the day of the test
}

// Worker is somebody who has built.
type Worker struct {
	ID, Name string
	Steps    int // that count
}

// Inspected is a hold that was signed.
type Inspected struct {
	Hold, ID, Name, At string
	Alone              bool // by one who built it too: a concession
}

// Layer is a layer measured beside the sheet.
type Layer struct {
	Branch   string
	Layer    int
	Bare     bool // a centre, before it was built up
	SheetMM  unit.Millimetre
	LeastMM  unit.Millimetre // with every wire at its smallest,
	MostMM   unit.Millimetre // at its largest; both 0 where nothing was read
	ReadMM   []unit.Millimetre
	MeanMM   unit.Millimetre // of the readings; 0 where there are none
	Told     run.Told
	LayMM    model.Opt[unit.Millimetre] // one turn as it was measured
	SheetLay unit.Millimetre            // and by the sheet; 0 where it is straight
	Decided  bool                       // somebody with a name has decided that it stays as it is
}

// Within reports whether a layer was read and is within its tolerance.
func (l Layer) Within() bool {
	return len(l.ReadMM) > 0 && l.Told != run.TooThick && l.Told != run.TooThin
}

// Tube is a sheath measured once it was shrunk.
type Tube struct {
	Branch  string
	OverMM  unit.Millimetre
	SheetMM unit.Millimetre // by the sheet; 0 where it is not known
}

// Of is what the record of a serial says; false where the harness has no such serial.
func Of(s *sheet.Sheet, serial string) (Record, bool) {
	k := s.H.BuildOf(serial)
	if k < 0 {
		return Record{}, false
	}
	b := &s.H.Builds[k]
	steps := run.For(s, b)
	out := Record{Serial: serial, Number: s.H.Head.Number.V, Name: s.H.Head.Name.V, Revision: b.Revision.V,
		SheetAt: s.H.Head.Revision.V, Begun: b.Begun.V, GoesBy: b.GoesBy, Deviations: b.Apart, Lots: b.Lots, Again: b.Again,
		MassG: b.MassG, SheetG: s.Totals.Gram}
	out.tests(s, b, steps)
	out.people(s, b, steps)
	out.layers(s, b, steps)
	for _, t := range b.Tubes {
		one := Tube{Branch: t.Branch, OverMM: t.OverMM}
		if i, is := s.Index.Branch[t.Branch]; is && s.Branches[i].Sheath.Verdict.Wraps {
			one.SheetMM = s.Branches[i].Sheath.Verdict.OverMM
		}
		out.Tubes = append(out.Tubes, one)
	}
	all, _ := Minutes(s)
	for _, m := range all {
		if slices.Contains(m.Serials, serial) {
			out.Minutes = append(out.Minutes, m)
		}
	}
	out.open(s, b, steps)
	if len(out.Open) == 0 {
		for _, t := range b.Steps {
			if !t.Undone.Set {
				out.Ended = max(out.Ended, t.At.V)
			}
		}
	}
	return out, true
}

// tests are those of every step, as the last of each has them.
func (r *Record) tests(s *sheet.Sheet, b *model.Build, steps []run.RunStep) {
	if !b.EachTest.V {
		return
	}
	for _, step := range steps {
		for _, p := range run.Pieces(s, step) {
			c := p.Check
			if c.Kind == run.NoCheck {
				continue
			}
			t := Tested{Hold: cmp.Or(step.Name, "samples"), What: c.Name, Check: c}
			var last model.Test
			if t.Result, last = c.Result(b, step.Key); last.Limit.Set { // as it was when it was tested
				t.Check.Limit = last.Limit.V
			}
			t.Read, t.Fault, t.At, t.By = c.Reading(last), last.Fault.V, last.At.V, last.By.V
			for _, o := range b.Tests {
				if c.Is(o) && o.Step.V == step.Key {
					t.Times++
				}
			}
			t.Name, t.On = nameOf(s, t.By), instrument(s, last)
			r.Tests = append(r.Tests, t)
		}
	}
}

func nameOf(s *sheet.Sheet, id string) string {
	p, _ := s.Cat.Person(id)
	return p.Name
}

// instrument is what a test was read on; its calibration lasts through the day that it ends.
func instrument(s *sheet.Sheet, t model.Test) Instrument {
	i, known := s.Cat.Instrument(t.Instrument.V)
	if !known {
		i = catalogue.Instrument{ID: t.Instrument.V}
	}
	day, _, _ := strings.Cut(t.At.V, " ")
	return Instrument{i, known, i.Due != "" && day > i.Due}
}

// people are who has built and who has inspected.
func (r *Record) people(s *sheet.Sheet, b *model.Build, steps []run.RunStep) {
	for _, t := range b.Steps {
		if t.Undone.Set || t.By.V == "" || strings.HasPrefix(t.Key, "hold ") {
			continue
		}
		k := slices.IndexFunc(r.Built, func(w Worker) bool { return w.ID == t.By.V })
		if k < 0 {
			r.Built, k = append(r.Built, Worker{ID: t.By.V, Name: nameOf(s, t.By.V)}), len(r.Built)
		}
		r.Built[k].Steps++
	}
	slices.SortStableFunc(r.Built, func(a, b Worker) int { return cmp.Compare(b.Steps, a.Steps) })
	for _, step := range steps {
		for _, g := range b.Signed {
			if g.Step != step.Key {
				continue
			}
			r.Inspected = append(r.Inspected, Inspected{Hold: cmp.Or(step.Name, "open stops"), ID: g.By, Name: nameOf(s, g.By), At: g.At.V,
				Alone: slices.ContainsFunc(r.Built, func(w Worker) bool { return w.ID == g.By }) && step.Key != run.HoldStops})
		}
	}
}

// layers are those of the run, measured or not.
func (r *Record) layers(s *sheet.Sheet, b *model.Build, steps []run.RunStep) {
	judge := run.NewJudge(s, b)
	for _, step := range steps {
		i, is := s.Index.Branch[step.Of]
		if !is || step.Kind != run.LayStep && step.Kind != run.BuildUpStep || step.Layer >= len(s.Branches[i].Layers) {
			continue
		}
		of := &s.Branches[i].Layers[step.Layer]
		l := Layer{Branch: step.Of, Layer: step.Layer, Bare: step.Bare, SheetMM: of.OverMM, SheetLay: of.LayMM}
		if step.Bare {
			l.SheetMM = of.BareMM()
		}
		if read := b.ReadingOf(step.Of, step.Layer); read != nil {
			l.ReadMM, l.LayMM = *step.Readings(read), read.LayMM
			if e, ok := judge.Explain(i, step, l.ReadMM); ok {
				l.SheetMM, l.LeastMM, l.MostMM, l.MeanMM, l.Told = e.SheetMM, e.LeastMM, e.MostMM, e.ReadMM, e.Told
			}
		}
		l.Decided = slices.ContainsFunc(b.Apart, func(d model.Deviation) bool { return d.Step.V == step.Key && d.By.Set })
		r.Layers = append(r.Layers, l)
	}
}

// open is what stands against a certificate.
func (r *Record) open(s *sheet.Sheet, b *model.Build, steps []run.RunStep) {
	say := func(format string, a ...any) { r.Open = append(r.Open, fmt.Sprintf(format, a...)) }
	n, first := 0, ""
	for _, step := range steps {
		if !step.In(b) {
			n, first = n+1, cmp.Or(first, step.Key)
		}
	}
	if n > 0 {
		say("steps that are not done: %d of %d, the first is %s", n, len(steps), first)
	}
	for _, step := range steps {
		if step.Kind == run.HoldStep && !slices.ContainsFunc(b.Signed, func(g model.Signature) bool { return g.Step == step.Key }) {
			say("the hold %s is not signed", cmp.Or(step.Name, "open stops"))
		}
	}
	if r.Revision != r.SheetAt {
		say("it was built from revision %s, the sheet is revision %s", cmp.Or(r.Revision, "-"), cmp.Or(r.SheetAt, "-"))
	}
	if !b.EachTest.V {
		say("its record is of before tests were written down: the holds are signed, not measured")
	}
	r.untested(say)
	for _, t := range r.Tests {
		switch {
		case t.Result == run.Failed && t.Fault != "":
			say("%s: %s failed (%s), and it was neither mended nor decided on", t.Hold, t.What, t.Fault)
		case t.Result == run.Failed:
			say("%s: %s is out of its limit, and nobody has decided on it", t.Hold, t.What)
		case t.On.Overdue:
			say("%s: %s was read on %s, whose calibration ended on %s", t.Hold, t.What, t.On.ID, t.On.Due)
		}
	}
	for _, l := range r.Layers {
		if len(l.ReadMM) > 0 && !l.Within() && !l.Decided {
			say("%s %s is out of tolerance, and nobody has decided on it", l.Branch, model.LayerName(l.Layer))
		}
	}
	for _, d := range r.Deviations {
		if !d.By.Set {
			say("nobody has decided on what differs at %s: %s", d.At, d.Says)
		}
	}
}

// untested says once for each hold what was not tested.
func (r *Record) untested(say func(format string, a ...any)) {
	var holds []string
	first, n := map[string]string{}, map[string]int{}
	for _, t := range r.Tests {
		if t.Result != run.Untested {
			continue
		}
		if n[t.Hold]++; n[t.Hold] == 1 {
			holds = append(holds, t.Hold)
			first[t.Hold] = t.What
		}
	}
	for _, h := range holds {
		if more := n[h] - 1; more > 0 {
			say("%s: %s was not tested, and %d more", h, first[h], more)
		} else {
			say("%s: %s was not tested", h, first[h])
		}
	}
}
