package built

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/calc/phase/threading"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Fact is what the sheet has one step of the run make.
type Fact struct {
	Key  string // of the step, as a build remembers it: "cut 101", "lay T1 0"
	Step string // what it is ticked with: of a wire its batch, else the key
	At   string // the wire, layer or part it is about, as a person says it
	Kind Kind
	Of   string     // id of the wire, unit, branch, splice, breakout or termination
	What model.What // nothing of a hold point
	On   []string   // the steps whose work it goes over or puts to use
}

// Kind is what sort of work a step is.
type Kind int

// The kinds of work, in the order that one goes over the other.
const (
	Cut Kind = iota
	Make
	Lay
	Join
	Put // threaded on, wound on or shrunk
	Pin
	Glue
	Hold
)

// The hold points by key.
const (
	HoldStops  = "hold stops" // only where the sheet says stop
	HoldBare   = "hold bare"
	HoldFit    = "hold fit"
	HoldPinned = "hold pinned"
	HoldLoaded = "hold loaded"
)

// Weigh is the step that weighs the finished harness, by key.
const Weigh = "weigh"

// proves is the work that each hold point is signed for: it is signed again once that is done
// again. Common practice, no source: a net is rung out again when a wire of it is replaced. A mass is that
// of all that was on when it was weighed.
var proves = []struct {
	key   string
	kinds []Kind
}{
	{HoldBare, []Kind{Cut, Make, Lay, Join}},
	{HoldPinned, []Kind{Cut, Make, Lay, Join, Pin}},
	{HoldFit, []Kind{Cut, Make, Lay, Join, Put, Pin}},
	{Weigh, []Kind{Cut, Make, Lay, Join, Put, Pin, Glue}},
	{HoldLoaded, []Kind{Cut, Make, Lay, Join, Pin}},
}

// Facts are what the sheet has each step of the run make, in about the order they are done.
func Facts(s *sheet.Sheet) []Fact {
	var out []Fact
	out = append(out, cuts(s)...)
	for i := range s.H.Units {
		out = append(out, made(s, i))
	}
	out = append(out, laid(s)...)
	for i := range s.H.Splices {
		out = append(out, joined(s, i))
	}
	out = append(out, put(s)...)
	return append(out, holds(s, out)...)
}

// hundredth is a length as the program writes it: to 0.01 mm.
func hundredth(v unit.Millimetre) model.Opt[unit.Millimetre] {
	return model.Some(unit.Millimetre(math.Round(float64(v)*100) / 100))
}

// along is the ids of branches, and how long each is.
func along(s *sheet.Sheet, branches ...int) (ids []string, mm []unit.Millimetre) {
	for _, b := range branches {
		ids, mm = append(ids, s.H.Branches[b].ID), append(mm, hundredth(s.H.Branches[b].LengthMM).V)
	}
	return ids, mm
}

func cuts(s *sheet.Sheet) []Fact {
	var out []Fact
	for k := range s.Wires {
		w, c := &s.H.Wires[k], &s.Wires[k]
		if c.Cut <= 0 {
			continue
		}
		f := Fact{Key: "cut " + w.ID, At: w.ID, Of: w.ID, Kind: Cut, What: model.What{Spec: model.Some(w.Spec), Size: model.Some(w.Size),
			Colour: w.Colour, MM: hundredth(c.Cut), FinishedMM: hundredth(c.Finished)}}
		f.Step = fmt.Sprintf("cut %s %s %s", w.Spec, catalogue.CanonicalSize(w.Size), unit.Fixed(c.Cut, 0))
		f.What.Path, f.What.PathMM = along(s, c.Path...)
		out = append(out, f)
	}
	return out
}

func made(s *sheet.Sheet, i int) Fact {
	u := &s.H.Units[i]
	f := Fact{Key: "make " + u.ID, At: u.ID, Of: u.ID, Kind: Make, What: model.What{Members: slices.Clone(u.Wires)}}
	f.Step = f.Key
	if s.Units[i].LayMM > 0 {
		f.What.LayMM = hundredth(s.Units[i].LayMM)
	}
	if s.Units[i].Dia.Known() {
		f.What.OverMM = hundredth(s.Units[i].Dia.Nominal)
	}
	if u.Shield.V {
		f.What.Ends = []string{"drain " + u.DrainFrom.Or("-"), "drain " + u.DrainTo.Or("-")}
	}
	for _, id := range u.Wires {
		f.On = append(f.On, "cut "+id)
	}
	return f
}

// makes is the step that makes a wire or unit.
func makes(s *sheet.Sheet, id string) string {
	if _, is := s.Index.Unit[id]; is {
		return "make " + id
	}
	return "cut " + id
}

// LayerAt is a layer of a branch as a person says it.
func LayerAt(branch string, layer int) string {
	return strings.TrimSpace(branch + " " + strings.TrimPrefix(model.LayerName(layer), "the "))
}

func laid(s *sheet.Sheet) []Fact {
	var out []Fact
	made := MadeWhen(s)
	for i := range s.Branches {
		id, b := s.H.Branches[i].ID, &s.Branches[i]
		for k := range b.Layers {
			l := &b.Layers[k]
			f := Fact{Key: fmt.Sprintf("lay %s %d", id, k), At: LayerAt(id, k), Of: id, Kind: Lay,
				What: model.What{Hand: model.Some(l.Hand), Fillers: model.Some(l.Fillers), OverMM: hundredth(l.BareMM())}}
			f.Step = f.Key
			for _, c := range l.Members {
				if c.Kind != sheet.OfFiller {
					f.What.Members = append(f.What.Members, c.ID)
					f.On = append(f.On, makes(s, c.ID))
				}
			}
			if l.Fillers > 0 && l.FillerMM > 0 {
				f.What.FillerMM = hundredth(l.FillerMM)
			}
			if k < len(b.As) && b.As[k].BindMM.V > 0 && l.BuiltMM <= 0 {
				f.What.BindMM = hundredth(b.As[k].BindMM.V)
			}
			if l.LayMM > 0 {
				f.What.LayMM = hundredth(l.LayMM)
			}
			if k > 0 {
				f.On = append(f.On, beneath(s, i, k-1))
			}
			for n, m := range made { // a splice inside it was made before, and lies under it
				if m.Branch == i && m.Layer == k && m.Inside {
					f.On = append(f.On, "join "+s.H.Splices[n].ID)
				}
			}
			f.What.Path, f.What.PathMM = along(s, i)
			out = append(out, f)
			if l.BuiltMM > 0 {
				out = append(out, builtUp(s, i, k))
			}
		}
	}
	return out
}

// builtUp is the tape round a centre.
func builtUp(s *sheet.Sheet, i, k int) Fact {
	id, l := s.H.Branches[i].ID, &s.Branches[i].Layers[k]
	f := Fact{Key: beneath(s, i, k), At: LayerAt(id, k), Of: id, Kind: Lay, On: []string{fmt.Sprintf("lay %s %d", id, k)},
		What: model.What{BindMM: hundredth(l.BuiltMM), OverMM: hundredth(l.OverMM)}}
	f.Step = f.Key
	if l.BuiltOf != "" {
		f.What.Part = model.Some(l.BuiltOf)
	}
	f.What.Path, f.What.PathMM = along(s, i)
	return f
}

// beneath is the step that leaves layer k of branch i as the next one lies on it.
func beneath(s *sheet.Sheet, i, k int) string {
	if s.Branches[i].Layers[k].BuiltMM > 0 {
		return BuildUpKey(s.H.Branches[i].ID)
	}
	return fmt.Sprintf("lay %s %d", s.H.Branches[i].ID, k)
}

// BuildUpKey is the step that builds up the centre of a branch.
func BuildUpKey(branch string) string { return "build up " + branch }

func joined(s *sheet.Sheet, i int) Fact {
	sp, c := &s.H.Splices[i], &s.Splices[i]
	f := Fact{Key: "join " + sp.ID, At: sp.ID, Of: sp.ID, Kind: Join, What: model.What{Place: model.Some(sp.At)}}
	f.Step = f.Key
	if c.Part != "" {
		f.What.Part = model.Some(c.Part)
	}
	if sp.Toward.V != "" {
		f.What.Place, f.What.MM = model.Some(sp.At+" along "+sp.Toward.V), hundredth(sp.OffsetMM.V)
	}
	for _, k := range c.Wires {
		f.What.Members = append(f.What.Members, s.H.Wires[k].ID)
		f.On = append(f.On, "cut "+s.H.Wires[k].ID)
	}
	return f
}

// put is everything that is threaded on, wound on or shrunk, the contacts, and the adhesive.
func put(s *sheet.Sheet) []Fact {
	all := threading.Threading(s)
	keys := threading.Keys(all)
	var out, pins, shrunk []Fact
	comesFrom := map[string][]string{} // what comes over the tails of an end, by where it comes from
	on := map[string][]string{}        // what is on a branch so far, by the steps that put it on
	fixed := map[string][]string{}     // and by those that fix it there
	for n, t := range all {
		if t.What == sheet.PartContacts {
			pins = append(pins, Fact{Key: "pin " + t.Of, Step: "pin " + t.Of, At: t.Of, Of: t.Of, Kind: Pin})
			continue
		}
		f := Fact{At: t.Of + " " + string(t.What) + " " + t.Part, Of: t.Of, Kind: Put, What: model.What{Part: model.Some(t.Part)}}
		if t.CutMM > 0 {
			f.What.MM = hundredth(t.CutMM)
		}
		branches := s.Index.Meeting(t.Of)
		if i, is := s.Index.Branch[t.Of]; is {
			f.What.FromMM, f.What.ToMM = hundredth(t.FromMM), hundredth(t.ToMM)
			f.What.Path, f.What.PathMM = along(s, i)
			branches = []int{i}
		}
		var bare, under []string
		for _, i := range branches {
			id := s.H.Branches[i].ID
			bare = append(append(bare, outermost(s, i)...), on[id]...)
			under = append(under, fixed[id]...)
		}
		if t.GoesOn == model.WoundOn {
			f.Key = "wind " + keys[n]
			f.Step, f.On = f.Key, append(bare, under...)
			on[t.Of], fixed[t.Of] = append(on[t.Of], f.Key), append(fixed[t.Of], f.Key)
			out = append(out, f)
			continue
		}
		f.Key = "thread " + keys[n]
		f.Step, f.On = f.Key, bare
		comesFrom[t.From] = append(comesFrom[t.From], f.Key)
		on[t.Of] = append(on[t.Of], f.Key)
		out = append(out, f)
		if t.GoesOn == model.ShrunkOn {
			f.Key, f.On = "shrink "+keys[n], append([]string{f.Key}, under...)
			f.Step = f.Key
			fixed[t.Of] = append(fixed[t.Of], f.Key)
			shrunk = append(shrunk, f)
		}
	}
	before := map[string]string{} // the place that each place is reached from
	for _, k := range wires.Walked(s) {
		before[k.To] = k.From
	}
	for k := range pins {
		pinned(s, &pins[k], comesFrom, before)
	}
	out = slices.Concat(out, pins, shrunk)
	return append(out, glued(s, shrunk)...)
}

// outermost is the step that lays the last layer of branch i.
func outermost(s *sheet.Sheet, i int) []string {
	if n := len(s.Branches[i].Layers); n > 0 {
		return []string{fmt.Sprintf("lay %s %d", s.H.Branches[i].ID, n-1)}
	}
	return nil
}

// pinned fills in which wire goes into which cavity, on the wires and on all that comes over
// their tails: once a contact is on, nothing is threaded on any more.
func pinned(s *sheet.Sheet, f *Fact, comesFrom map[string][]string, before map[string]string) {
	c := &s.Terms[s.Index.Termination[f.Of]]
	for _, name := range c.Cavities {
		switch cav := c.State[name]; {
		case len(cav.Wires) > 0:
			f.What.Ends = append(f.What.Ends, name+" "+strings.Join(cav.Wires, "+"))
			for _, id := range cav.Wires {
				f.On = append(f.On, "cut "+id)
			}
		case cav.Drain != "":
			f.What.Ends = append(f.What.Ends, name+" drain "+cav.Drain)
			f.On = append(f.On, "make "+cav.Drain)
		}
	}
	f.On = append(f.On, comesFrom[f.Of]...)
	met := map[string]bool{}
	for place := before[f.Of]; place != "" && !met[place]; place = before[place] {
		met[place] = true
		f.On = append(f.On, comesFrom["the ends beyond "+place]...)
	}
}

// glued is each mix of adhesive, on the moulded parts it is spread under.
func glued(s *sheet.Sheet, shrunk []Fact) []Fact {
	var out []Fact
	for n, m := range threading.Mixes(s) {
		f := Fact{Key: fmt.Sprintf("glue %d", n+1), At: fmt.Sprint("mix ", n+1), Kind: Glue, What: model.What{Members: m.Joints}}
		f.Step = f.Key
		for _, p := range shrunk {
			if slices.ContainsFunc(m.Joints, func(j string) bool { return strings.HasPrefix(j, p.Of+" ") }) {
				f.On = append(f.On, p.Key)
			}
		}
		out = append(out, f)
	}
	return out
}

// stopAt names a stop by where it is and its rule: its sentence holds figures that move.
func stopAt(g sheet.Snag) string { return g.Where + " " + g.Rule }

// holds are the hold points, each on the work that it is signed for. The one that is signed
// because the sheet says stop names what it says stop to.
func holds(s *sheet.Sheet, work []Fact) []Fact {
	var out []Fact
	stops := Fact{Key: HoldStops, Step: HoldStops, At: "stops", Kind: Hold}
	for _, g := range s.Snags {
		if at := stopAt(g); g.Level == sheet.Stop && !slices.Contains(stops.What.Members, at) {
			stops.What.Members = append(stops.What.Members, at)
		}
	}
	if len(stops.What.Members) > 0 {
		out = append(out, stops)
	}
	for _, p := range proves {
		f := Fact{Key: p.key, Step: p.key, At: p.key, Kind: Hold}
		if p.key == Weigh {
			f.At = "the harness"
		}
		for _, w := range work {
			early := w.Kind == Put && strings.HasPrefix(w.Key, "shrink ") && p.key != Weigh // nothing is shrunk before a hold
			if slices.Contains(p.kinds, w.Kind) && !early {
				f.On = append(f.On, w.Key)
			}
		}
		out = append(out, f)
	}
	return out
}

// Proofs are the holds that a build has signed for any of some steps, and its weighing where they are in the
// mass: what no longer holds once these steps are taken back.
func Proofs(facts []Fact, b *model.Build, steps []string) []string {
	var out []string
	for _, f := range facts {
		if f.Kind == Hold && f.Key != HoldStops && b.Did(f.Key) &&
			slices.ContainsFunc(f.On, func(on string) bool { return slices.Contains(steps, on) }) {
			out = append(out, f.Key)
		}
	}
	return out
}

// Undo takes a step back with the reason; the mass goes with the step that read it.
func Undo(b *model.Build, key, reason string) {
	b.Undo(key, reason)
	if key == Weigh {
		b.MassG = model.Opt[unit.Gram]{}
	}
}
