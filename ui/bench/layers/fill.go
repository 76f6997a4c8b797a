package layers

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/ends"
	"contralay/calc/phase/planning"
	"contralay/calc/query/offer"
	"contralay/calc/query/why"
	"contralay/calc/query/why/shape"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/layers/ways"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// vacancy is one use of a vacant place.
type vacancy struct {
	Layer int
	Says  string
	What  string
	Make  func(m *desk.Model) (*model.Harness, string)
	Why   []desk.Reason
}

// filling is what the step Fill keeps.
type filling struct {
	offers desk.Kept[[]vacancy]
	units  map[string][]planning.UnitOffer // by plan key: what could be made up, worked out beside the step
}

// PlanUnits asks which loose wires could be made up into units.
func PlanUnits(m *desk.Model) (desk.Work, bool) {
	_, b, ok := m.BranchHere()
	if !ok || b.Make != model.MakeLaid || len(b.Layers) == 0 {
		return desk.Work{}, false
	}
	key := bundle.PlanKey(m.Sheet, m.Branch)
	if _, known := desk.State[filling](m).units[key]; known {
		return desk.Work{}, false
	}
	s, i := m.Sheet, m.Branch
	return desk.Work{Key: "units\x00" + key, Do: func() func(m *desk.Model) {
		units := planning.UnitOffers(s, i)
		return func(m *desk.Model) {
			f := desk.State[filling](m)
			if f.units == nil {
				f.units = map[string][]planning.UnitOffer{}
			}
			f.units[key] = units
		}
	}}, true
}

// FillPage lists, for each layer with room, what could fill it, best first: a
// spare, a doubled ground or feed, the next size up, a filler in stock, or
// nothing.
func FillPage(m *desk.Model, _ int, _ string) desk.Page {
	mb, b, ok := m.BranchHere()
	if !ok || len(b.Layers) == 0 {
		return desk.Page{Empty: "Nothing is laid yet"}
	}
	p := desk.Page{Why: desk.FiguresOf(mb.ID, "branch.room")}
	room := 0
	for k := range b.Layers {
		room += b.Layers[k].Room
	}
	n := 0
	for k := range b.Layers {
		n += b.Layers[k].Spares
	}
	p.Lines = []string{fmt.Sprintf("%d spares here, the shop wants %d; room for %d", n, m.Sheet.Limits.SparesWanted, room),
		"free cavities: " + desk.FreeText(m)}
	offers := desk.State[filling](m).offers.Get(m.Sheet, m.Branch, "", func() []vacancy { return findOffers(m) })
	columns := useColumns(m)
	for _, o := range offers {
		p.Rows = append(p.Rows, desk.Row{
			Text: columns.Line(use{layer: layerWord(o.Layer), what: o.What, how: o.Says}),
			Detail: fmt.Sprintf("%s has room for %d more. Enter or + takes the offer", words.Capital(model.LayerName(o.Layer)),
				b.Layers[o.Layer].Room),
			Id:    firstID(&b.Layers[o.Layer]),
			Layer: model.Some(o.Layer),
			Why:   append(desk.FiguresAt(mb.ID, o.Layer, "layer.room", "layer.takes"), o.Why...),
			Enter: func(m *desk.Model) { fill(m, o) }, Step: func(m *desk.Model, by int) {
				if by > 0 {
					fill(m, o)
				} else {
					m.Tell("Backspace undoes it")
				}
			},
		})
	}
	p.Rows = append(p.Rows, unitRows(m, columns)...)
	for k := range b.Layers {
		if b.Layers[k].Fillers > 0 && k > 0 {
			p.Rows = append(p.Rows, desk.Row{Text: columns.Line(use{layer: layerWord(k), what: "filler",
				how: fmt.Sprintf("%d x %s %s; + - more or fewer",
					b.Layers[k].Fillers, m.Sys.Fine(b.Layers[k].FillerMM), m.Sys.Name())}),
				Detail: "Fillers only keep the layer round", Why: desk.FiguresAt(mb.ID, k, "layer.filler"),
				Step: func(m *desk.Model, by int) { addFiller(m, k, by, 0) }})
		}
	}
	p.Empty = "No free place: every layer is full"
	if len(p.Rows) > 0 {
		p.Cols = columns.Head()
	}
	return p
}

// use is one row of the list: a layer, and what its room could be used for.
type use struct{ layer, what, how string }

func useColumns(m *desk.Model) kit.Columns[use] {
	return kit.GivenColumns([]kit.Column[use]{
		{Head: "layer", Least: 7, Cell: func(u use) string { return u.layer }},
		{Head: "use", Least: 7, Cell: func(u use) string { return u.what }},
		{Head: "how", Cell: func(u use) string { return u.how }},
	}, m.Cfg.ASCII)
}

func fill(m *desk.Model, o vacancy) {
	h, says := o.Make(m)
	m.Change(h, says)
}

// findOffers works out what could fill each layer that has room.
func findOffers(m *desk.Model) []vacancy {
	mb, b, _ := m.BranchHere()
	var out []vacancy
	if b.Make != model.MakeLaid {
		return nil
	}
	for k := 1; k < len(b.Layers); k++ {
		l := &b.Layers[k]
		if l.Room <= 0 {
			continue
		}
		if o, ok := spareOffer(m, k); ok {
			out = append(out, o)
		}
		if o, ok := doubleOffer(m, k); ok {
			out = append(out, o)
		}
		if o, ok := upOffer(m, k); ok {
			out = append(out, o)
		}
		if o, ok := centreOffer(m, k); ok {
			out = append(out, o)
		}
		for _, d := range fillerSizes(m, l) {
			out = append(out, vacancy{Layer: k, Says: fillerSays(m, d), What: "filler",
				Make: func(m *desk.Model) (*model.Harness, string) {
					h := written(m)
					n := h.Branches[m.Branch].Layers[k].Fillers.V + 1
					return h.EditBranch(m.Branch, func(b *model.Branch) {
						b.Layers[k].Fillers, b.Layers[k].FillerMM = model.Some(n), model.Some(unit.Written(d))
					}), fmt.Sprintf("fillers in %s: %d", model.LayerName(k), n)
				}, Why: append(desk.FiguresAt(mb.ID, k, "layer.filler"), desk.FiguresIn("", k, thinnest(l), "component.over")...)})
		}
	}
	return out
}

// fillerSays is one more filler of a size: what it is and what heat it stands.
func fillerSays(m *desk.Model, d unit.Millimetre) string {
	c, what, known := bundle.FillerC(m.Sheet, m.Branch, d)
	heat := "temperature: see its sheet"
	if known {
		heat = fmt.Sprintf("to %s C", unit.Fixed(c, 0))
	}
	return fmt.Sprintf("%s %s %s, one more, %s", m.Sys.Fine(d), m.Sys.Name(), what, heat)
}

// centreOffer is the best option on another centre that leaves fewer places
// vacant and takes no more filler; it stands once, at the outermost layer with
// room.
func centreOffer(m *desk.Model, k int) (vacancy, bool) {
	mb, b, _ := m.BranchHere()
	room, fillers := 0, 0
	for j := range b.Layers {
		if j > k && b.Layers[j].Room > 0 {
			return vacancy{}, false
		}
		room, fillers = room+b.Layers[j].Room, fillers+b.Layers[j].Fillers
	}
	for n, o := range m.Sheet.Proposals[bundle.PlanKey(m.Sheet, m.Branch)].Options {
		left := 0
		for j, l := range o.Plan.Layers {
			if j > 0 {
				left += l.Room
			}
		}
		if len(o.Spares) > 0 || left >= room || o.Plan.Rods() > fillers || desk.SameSet(o.Layers[0].Of, b.As[0].Of) &&
			ways.SameTape(o.Layers[0].BindMM.V, b.As[0].BindMM.V) {
			continue
		}
		aloud := paper.Aloud(paper.Counts(o.Plan), m.Cfg.ASCII)
		says := fmt.Sprintf("another: %s, %d free, OD %s", aloud, left, m.Sys.Diameter(o.Plan.Over))
		if to, by := o.Plan.BuiltUp(); to > 0 {
			says += ", " + sheet.BuiltUp(m.Sys, o.Layers[0].Of, to, by, "")
		}
		return vacancy{Layer: k, Says: says,
			What: "centre",
			Make: func(m *desk.Model) (*model.Harness, string) {
				return planning.Laid(m.Sheet, m.H, m.Branch, o), "laid as " + aloud
			}, Why: desk.FiguresAt(mb.ID, n, "option.over")}, true
	}
	return vacancy{}, false
}

// fillerSizes is what may be laid as filler: what lies there already, else the
// stock sizes nearest to the layer's own, else white wire of its smallest size.
func fillerSizes(m *desk.Model, l *sheet.Layer) []unit.Millimetre {
	if l.Fillers > 0 {
		return []unit.Millimetre{l.FillerMM}
	}
	least := smallest(l)
	if stock := slices.Clone(m.Sheet.Limits.FillerStock); len(stock) > 0 {
		slices.SortFunc(stock, func(a, b unit.Millimetre) int {
			if (a-least)*(a-least) < (b-least)*(b-least) {
				return -1
			}
			return 1
		})
		return stock[:min(2, len(stock))]
	}
	if least > 0 {
		return []unit.Millimetre{least}
	}
	return nil
}

func smallest(l *sheet.Layer) unit.Millimetre {
	d := unit.Millimetre(0)
	for _, c := range l.Members {
		if c.Kind != sheet.OfFiller && (d == 0 || c.D < d) {
			d = c.D
		}
	}
	return d
}

// thinnest is the id of a layer's thinnest component.
func thinnest(l *sheet.Layer) string {
	d := smallest(l)
	for _, c := range l.Members {
		if c.Kind != sheet.OfFiller && c.D == d {
			return c.ID
		}
	}
	return ""
}

// likes is what a spare may be cut from, best first: the layer's own thinnest
// single wire, then the sizes of the branch that are no thicker, commonest first.
func likes(m *desk.Model, l *sheet.Layer) []int {
	least := smallest(l)
	count, first := map[unit.Millimetre]int{}, map[unit.Millimetre]int{}
	var sizes []unit.Millimetre
	for _, i := range m.WiresHere() {
		d := m.Sheet.Wires[i].Dia.Nominal
		if d > least+sheet.SameSize {
			continue
		}
		if count[d]++; count[d] == 1 {
			sizes, first[d] = append(sizes, d), i
		}
	}
	slices.SortStableFunc(sizes, func(a, b unit.Millimetre) int {
		return cmp.Or(-cmp.Compare(own(a, least), own(b, least)), -cmp.Compare(count[a], count[b]))
	})
	var out []int
	for _, d := range sizes {
		out = append(out, first[d])
	}
	return out
}

func own(d, least unit.Millimetre) int {
	if d >= least-sheet.SameSize {
		return 1
	}
	return 0
}

// spareOffer is a spare between the two terminations with most free cavities
// whose way runs through this branch.
func spareOffer(m *desk.Model, k int) (vacancy, bool) {
	_, b, _ := m.BranchHere()
	for _, i := range likes(m, &b.Layers[k]) {
		places := bundle.SparePlaces(m.Sheet, m.Branch, i, 1)
		if len(places) == 0 {
			continue
		}
		p := places[0]
		return vacancy{Layer: k, Says: fmt.Sprintf("%s, %s to %s", paper.Size(&m.H.Wires[i]), p.From, p.To), What: "spare",
			Make: func(m *desk.Model) (*model.Harness, string) {
				h, w := planning.AddSpare(m.Sheet, written(m), m.Branch, k, p)
				return h, fmt.Sprintf("spare %s from %s to %s", w.ID, p.From, p.To)
			}, Why: nil}, true
	}
	for _, i := range likes(m, &b.Layers[k]) { // with a cavity at one end only
		if p, ok := offer.DeadEnd(m.Sheet, m.Branch, i); ok {
			return vacancy{Layer: k, Says: fmt.Sprintf("%s, %s, dead-ended at %s", paper.Size(&m.H.Wires[i]), p.From, p.CappedAt),
				What: "spare", Make: func(m *desk.Model) (*model.Harness, string) {
					h, w := planning.AddSpare(m.Sheet, written(m), m.Branch, k, p)
					return h, fmt.Sprintf("spare %s from %s, capped and folded back at %s", w.ID, p.From, p.CappedAt)
				}, Why: nil}, true
		}
	}
	return vacancy{}, false
}

// layInto adds a wire along a path: into layer k of this branch, outermost elsewhere.
func layInto(m *desk.Model, w model.Wire, path []int, k int) *model.Harness {
	h := written(m)
	var others []int
	for _, b := range path {
		if b != m.Branch {
			others = append(others, b)
		}
	}
	return h.AddWire(w, others).EditBranch(m.Branch, func(b *model.Branch) { b.AddTo(k, w.ID) })
}

// doubleOffer doubles the ground or feed of this layer's size that carries most,
// where both its connectors have a free cavity.
func doubleOffer(m *desk.Model, k int) (vacancy, bool) {
	_, b, _ := m.BranchHere()
	least := smallest(&b.Layers[k])
	best, a, z := -1, "", ""
	for _, i := range m.WiresHere() {
		w := &m.H.Wires[i]
		if (w.Role.V != model.RoleGround && w.Role.V != model.RolePower) || w.Amps.V <= 0 || m.Sheet.Wires[i].Dia.Nominal > least+
			sheet.SameSize {
			continue
		}
		if _, in := m.Sheet.Index.UnitOf[w.ID]; in {
			continue
		}
		fa, okA := freeBeside(m, w.From.V, *w)
		fz, okZ := freeBeside(m, w.To.V, *w)
		if okA && okZ && (best < 0 || w.Amps.V > m.H.Wires[best].Amps.V) {
			best, a, z = i, fa, fz
		}
	}
	if best < 0 {
		return vacancy{}, false
	}
	src := m.H.Wires[best]
	path := m.Sheet.Wires[best].Path
	return vacancy{Layer: k, Says: fmt.Sprintf("second wire like %s, %s to %s", src.ID, a, z), What: "double",
		Make: func(m *desk.Model) (*model.Harness, string) {
			w := src
			w.ID, w.From, w.To = m.H.NextID(src.ID), model.Some(a), model.Some(z)
			w.Signal = model.Some(src.Signal.V + ", doubled")
			w.Amps = model.Some(src.Amps.V / 2)
			h := layInto(m, w, path, k)
			return h.EditWire(m.Sheet.Index.Wire[src.ID], func(o *model.Wire) { o.Amps = model.Some(src.Amps.V / 2) }),
				fmt.Sprintf("%s doubled by %s: half the current each", src.ID, w.ID)
		}, Why: nil}, true
}

// freeBeside is a free cavity of the same connector whose contact takes the wire,
// or the same splice.
func freeBeside(m *desk.Model, text string, w model.Wire) (string, bool) {
	return desk.FreeBeyond(m.Sheet, text, w, nil)
}

// upOffer takes one wire of the layer a size up, where the layer still closes
// with it: the one that carries most.
func upOffer(m *desk.Model, k int) (vacancy, bool) {
	_, b, _ := m.BranchHere()
	best := -1
	for _, c := range b.Layers[k].Members {
		i, ok := m.Sheet.Index.Wire[c.ID]
		if ok && m.H.Wires[i].Amps.V > 0 && (best < 0 || m.H.Wires[i].Amps.V > m.H.Wires[best].Amps.V) {
			best = i
		}
	}
	if best < 0 {
		return vacancy{}, false
	}
	w := m.H.Wires[best]
	sizes := m.Sheet.Cat.Sizes(w.Spec)
	at := slices.Index(sizes, w.Size)
	if at < 0 || at+1 >= len(sizes) || !endsTake(m, w, sizes[at+1]) {
		return vacancy{}, false
	}
	size := sizes[at+1]
	trial := calc.Build(written(m).EditWire(best, func(w *model.Wire) { w.Size = size }), m.Cfg.Cat, m.Sheet)
	if ls := trial.Branches[m.Branch].Layers; k >= len(ls) || ls[k].Lift > m.Sheet.Limits.LiftMax {
		return vacancy{}, false
	}
	return vacancy{Layer: k, Says: fmt.Sprintf("wire %s from %s to %s", w.ID, w.Size, size), What: "size up",
		Make: func(m *desk.Model) (*model.Harness, string) {
			return written(m).EditWire(m.Sheet.Index.Wire[w.ID], func(w *model.Wire) { w.Size = size }),
				fmt.Sprintf("wire %s is now %s", w.ID, size)
		}, Why: nil}, true
}

// endsTake reports whether the cavities at both ends of a wire take another size.
func endsTake(m *desk.Model, w model.Wire, size string) bool {
	for _, text := range []string{w.From.V, w.To.V} {
		e, ok := m.Sheet.Index.End(text)
		if t, known := m.Sheet.Index.Termination[e.Termination]; ok && known && !ends.Takes(m.Sheet, t, e.Cavity, w.Spec, size) {
			return false
		}
	}
	return true
}

// padding is what only keeps a lay-up round, in words.
func padding(p plan.Plan) string {
	fillers := words.Plural(p.Rods(), "filler", "fillers")
	if to, _ := p.BuiltUp(); to <= 0 {
		return fillers
	}
	if p.Rods() == 0 {
		return "a built-up centre"
	}
	return fillers + " and a built-up centre"
}

// unitRows is loose wires that would lie rounder made up into a unit.
func unitRows(m *desk.Model, columns kit.Columns[use]) []desk.Row {
	var out []desk.Row
	_, b, _ := m.BranchHere()
	st := b.Standing
	for _, o := range desk.State[filling](m).units[bundle.PlanKey(m.Sheet, m.Branch)] {
		aloud := paper.Aloud(o.Counts, m.Cfg.ASCII)
		out = append(out, desk.Row{
			Key: "unit " + strings.Join(o.Wires, " "),
			Text: columns.Line(use{layer: "any", what: "unit",
				how: fmt.Sprintf("%s of %s: %s, OD %s", o.Build, strings.Join(o.Wires, " "), aloud,
					m.Sys.Diameter(o.Over))}),
			Detail: fmt.Sprintf("Twisted first and laid as one piece: %s, not %s. Enter makes the unit",
				padding(o.Plan), padding(o.Was())),
			Id:  o.Wires[0],
			Why: []desk.Reason{{Made: func() (why.Why, bool) { return shape.PlanOver(o.Plan, "OD with that unit made up", st) }}},
			Enter: func(m *desk.Model) {
				id := m.H.NextID("U0")
				m.Change(m.H.AddUnit(model.Unit{ID: id, Wires: o.Wires, Build: model.Some(o.Build)}),
					fmt.Sprintf("%s is a %s of %s", id, o.Build, strings.Join(o.Wires, " ")))
			},
		})
	}
	return out
}
