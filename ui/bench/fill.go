package bench

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper"
)

// offer is one use of a vacant place.
type offer struct {
	layer int
	says  string
	what  string
	make  func(m *Model) (*model.Harness, string)
	why   []reason
}

// fillPage lists, for each layer with room, what could fill it, best first: a
// spare, a doubled ground or feed, the next size up, a filler in stock, or
// nothing.
func (m *Model) fillPage(w int) page {
	mb, b, ok := m.b()
	if !ok || len(b.Layers) == 0 {
		return page{empty: "nothing laid yet"}
	}
	p := page{why: figs(mb.ID, 0, "", "branch.room")}
	room := 0
	for k := range b.Layers {
		room += b.Layers[k].Room
	}
	n := 0
	for k := range b.Layers {
		n += b.Layers[k].Spares
	}
	p.lines = []string{fmt.Sprintf("%d spares here, the shop wants %d; room for %d", n, m.sheet.Limits.SparesWanted, room), "free cavities: " + m.freeText()}
	if m.offersFor != m.sheet || m.offersOf != m.branch {
		m.offers, m.offersFor, m.offersOf = m.findOffers(), m.sheet, m.branch
	}
	last := -1
	for _, o := range m.offers {
		if o.layer != last {
			last = o.layer
		}
		p.rows = append(p.rows, row{
			text:   fmt.Sprintf("%-8s%-8s%s", layerWord(o.layer), o.what, o.says),
			detail: fmt.Sprintf("%s: room for %d more; Enter or + does it", capital(model.LayerName(o.layer)), b.Layers[o.layer].Room),
			id:     firstID(&b.Layers[o.layer]),
			why:    append(figs(mb.ID, o.layer, "", "layer.room", "layer.takes"), o.why...),
			enter:  func(m *Model) { m.fill(o) }, step: func(m *Model, by int) {
				if by > 0 {
					m.fill(o)
				} else {
					m.tell("Backspace takes it back")
				}
			},
		})
	}
	p.rows = append(p.rows, m.unitRows()...)
	for k := range b.Layers {
		if b.Layers[k].Fillers > 0 && k > 0 {
			p.rows = append(p.rows, row{text: fmt.Sprintf("%-8s%-8s%d of %s %s; + - more or fewer", layerWord(k), "has", b.Layers[k].Fillers, m.sys.Fine(b.Layers[k].FillerMM), m.sys.Name()),
				detail: "what only keeps the layer round", why: figs(mb.ID, k, "", "layer.filler"), step: func(m *Model, by int) { m.addFiller(k, by, 0) }})
		}
	}
	p.empty = "no vacant place: every layer is full"
	if len(p.rows) > 0 {
		p.cols = fmt.Sprintf("%-8s%-8s%s", "layer", "use", "how")
	}
	return p
}

func (m *Model) fill(o offer) {
	h, says := o.make(m)
	m.change(h, says)
}

// findOffers works out what could fill each layer that has room.
func (m *Model) findOffers() []offer {
	mb, b, _ := m.b()
	var out []offer
	if b.Make != "laid" {
		return nil
	}
	for k := 1; k < len(b.Layers); k++ {
		l := &b.Layers[k]
		if l.Room <= 0 {
			continue
		}
		if o, ok := m.spareOffer(k); ok {
			out = append(out, o)
		}
		if o, ok := m.doubleOffer(k); ok {
			out = append(out, o)
		}
		if o, ok := m.upOffer(k); ok {
			out = append(out, o)
		}
		if o, ok := m.centreOffer(k); ok {
			out = append(out, o)
		}
		for _, d := range m.fillerSizes(l) {
			out = append(out, offer{k, m.fillerSays(d), "filler",
				func(m *Model) (*model.Harness, string) {
					h := m.written()
					n := h.Branches[m.branch].Layers[k].Fillers.V + 1
					return h.EditBranch(m.branch, func(b *model.Branch) {
						b.Layers[k].Fillers, b.Layers[k].FillerMM = model.Some(n), model.Some(d)
					}), fmt.Sprintf("%s has %d of filler", model.LayerName(k), n)
				}, append(figs(mb.ID, k, "", "layer.filler"), figs("", k, thinnest(l), "component.over")...)})
		}
	}
	return out
}

// fillerSays is one more filler of a size: what it is and what heat it stands.
func (m *Model) fillerSays(d unit.Millimetre) string {
	c, what, known := m.sheet.FillerC(m.branch, d)
	heat := "its sheet says to what heat"
	if known {
		heat = fmt.Sprintf("to %s C", unit.Fixed(float64(c), 0))
	}
	return fmt.Sprintf("%s %s %s, one more, %s", m.sys.Fine(d), m.sys.Name(), what, heat)
}

// centreOffer is the best option on another centre that leaves fewer places
// vacant and takes no more filler; it stands once, at the outermost layer with
// room.
func (m *Model) centreOffer(k int) (offer, bool) {
	mb, b, _ := m.b()
	room, fillers := 0, 0
	for j := range b.Layers {
		if j > k && b.Layers[j].Room > 0 {
			return offer{}, false
		}
		room, fillers = room+b.Layers[j].Room, fillers+b.Layers[j].Fillers
	}
	for n, o := range m.sheet.Proposals[m.sheet.PlanKey(m.branch)].Options {
		left := 0
		for j, l := range o.Plan.Layers {
			if j > 0 {
				left += l.Room
			}
		}
		if len(o.Spares) > 0 || left >= room || o.Plan.Fillers > fillers || sameSet(o.Layers[0].Of, b.As[0].Of) && o.Layers[0].BindMM == b.As[0].BindMM {
			continue
		}
		aloud := paper.Aloud(paper.Counts(o.Plan), m.cfg.ASCII)
		return offer{k, fmt.Sprintf("another: %s, %d vacant, over %s", aloud, left, m.sys.Diameter(o.Plan.Over)), "centre",
			func(m *Model) (*model.Harness, string) { return m.sheet.Laid(m.h, m.branch, o), "laid as " + aloud }, figs(mb.ID, n, "", "option.over")}, true
	}
	return offer{}, false
}

// fillerSizes is what may be laid as filler: what lies there already, else the
// stock sizes nearest to the layer's own, else white wire of its smallest size.
func (m *Model) fillerSizes(l *calc.Layer) []unit.Millimetre {
	if l.Fillers > 0 {
		return []unit.Millimetre{l.FillerMM}
	}
	least := smallest(l)
	if stock := slices.Clone(m.sheet.Limits.FillerStock); len(stock) > 0 {
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

func smallest(l *calc.Layer) unit.Millimetre {
	d := unit.Millimetre(0)
	for _, c := range l.Members {
		if c.Kind != calc.OfFiller && (d == 0 || c.D < d) {
			d = c.D
		}
	}
	return d
}

// thinnest is the id of a layer's thinnest component.
func thinnest(l *calc.Layer) string {
	d := smallest(l)
	for _, c := range l.Members {
		if c.Kind != calc.OfFiller && c.D == d {
			return c.ID
		}
	}
	return ""
}

// likes is what a spare may be cut from, best first: the layer's own thinnest
// single wire, then the sizes of the branch that are no thicker, commonest first.
func (m *Model) likes(l *calc.Layer) []int {
	least := smallest(l)
	count, first := map[unit.Millimetre]int{}, map[unit.Millimetre]int{}
	var sizes []unit.Millimetre
	for _, i := range m.wiresHere() {
		d := m.sheet.Wires[i].Dia.Nominal
		if d > least+calc.SameSize {
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
	if d >= least-calc.SameSize {
		return 1
	}
	return 0
}

// spareOffer is a spare between the two terminations with most free cavities
// whose way runs through this branch.
func (m *Model) spareOffer(k int) (offer, bool) {
	_, b, _ := m.b()
	for _, i := range m.likes(&b.Layers[k]) {
		places := m.sheet.SparePlaces(m.branch, i, 1)
		if len(places) == 0 {
			continue
		}
		p := places[0]
		return offer{k, fmt.Sprintf("%s, %s to %s", paper.Size(&m.h.Wires[i]), p.From, p.To), "spare", func(m *Model) (*model.Harness, string) {
			h, w := m.sheet.AddSpare(m.written(), m.branch, k, p)
			return h, fmt.Sprintf("spare %s from %s to %s", w.ID, p.From, p.To)
		}, nil}, true
	}
	for _, i := range m.likes(&b.Layers[k]) { // with a cavity at one end only
		if p, ok := m.sheet.DeadEnd(m.branch, i); ok {
			return offer{k, fmt.Sprintf("%s, %s, dead-ended at %s", paper.Size(&m.h.Wires[i]), p.From, p.CappedAt), "spare", func(m *Model) (*model.Harness, string) {
				h, w := m.sheet.AddSpare(m.written(), m.branch, k, p)
				return h, fmt.Sprintf("spare %s from %s, capped and folded back at %s", w.ID, p.From, p.CappedAt)
			}, nil}, true
		}
	}
	return offer{}, false
}

// layInto adds a wire along a path: into layer k of this branch, outermost elsewhere.
func (m *Model) layInto(w model.Wire, path []int, k int) *model.Harness {
	h := m.written()
	var others []int
	for _, b := range path {
		if b != m.branch {
			others = append(others, b)
		}
	}
	return h.AddWire(w, others).EditBranch(m.branch, func(b *model.Branch) { b.Layers[k].Of = append(b.Layers[k].Of, w.ID) })
}

func (m *Model) freeFor(t int, w model.Wire) []string {
	var out []string
	for _, c := range m.sheet.Terms[t].Free {
		if m.sheet.Takes(t, c, w.Spec, w.Size) {
			out = append(out, c)
		}
	}
	return out
}

// doubleOffer doubles the ground or feed of this layer's size that carries most,
// where both its connectors have a free cavity.
func (m *Model) doubleOffer(k int) (offer, bool) {
	_, b, _ := m.b()
	least := smallest(&b.Layers[k])
	best, a, z := -1, "", ""
	for _, i := range m.wiresHere() {
		w := &m.h.Wires[i]
		if (w.Role.V != "ground" && w.Role.V != "power") || w.Amps.V <= 0 || m.sheet.Wires[i].Dia.Nominal > least+calc.SameSize {
			continue
		}
		if _, in := m.sheet.X.UnitOf[w.ID]; in {
			continue
		}
		fa, okA := m.freeBeside(w.From.V, *w)
		fz, okZ := m.freeBeside(w.To.V, *w)
		if okA && okZ && (best < 0 || w.Amps.V > m.h.Wires[best].Amps.V) {
			best, a, z = i, fa, fz
		}
	}
	if best < 0 {
		return offer{}, false
	}
	src := m.h.Wires[best]
	path := m.sheet.Wires[best].Path
	return offer{k, fmt.Sprintf("%s %s again, %s to %s", src.Role.V, src.ID, a, z), "double", func(m *Model) (*model.Harness, string) {
		w := src
		w.ID, w.From, w.To = m.h.NextID(src.ID), model.Some(a), model.Some(z)
		w.Signal = model.Some(src.Signal.V + ", doubled")
		w.Amps = model.Some(src.Amps.V / 2)
		h := m.layInto(w, path, k)
		return h.EditWire(m.sheet.X.Wire[src.ID], func(o *model.Wire) { o.Amps = model.Some(src.Amps.V / 2) }),
			fmt.Sprintf("%s doubled by %s: half the current each", src.ID, w.ID)
	}, nil}, true
}

// freeBeside is a free cavity of the same connector whose contact takes the wire,
// or the same splice.
func (m *Model) freeBeside(text string, w model.Wire) (string, bool) {
	return m.freeBeyond(text, w, nil)
}

// upOffer takes one wire of the layer a size up, where the layer still closes
// with it: the one that carries most.
func (m *Model) upOffer(k int) (offer, bool) {
	_, b, _ := m.b()
	best := -1
	for _, c := range b.Layers[k].Members {
		i, ok := m.sheet.X.Wire[c.ID]
		if ok && m.h.Wires[i].Amps.V > 0 && (best < 0 || m.h.Wires[i].Amps.V > m.h.Wires[best].Amps.V) {
			best = i
		}
	}
	if best < 0 {
		return offer{}, false
	}
	w := m.h.Wires[best]
	sizes := m.sheet.Cat.Sizes(w.Spec)
	at := slices.Index(sizes, w.Size)
	if at < 0 || at+1 >= len(sizes) || !m.endsTake(w, sizes[at+1]) {
		return offer{}, false
	}
	size := sizes[at+1]
	trial := calc.Build(m.written().EditWire(best, func(w *model.Wire) { w.Size = size }), m.cfg.Cat, m.sheet)
	if ls := trial.Branches[m.branch].Layers; k >= len(ls) || ls[k].Lift > m.sheet.Limits.LiftMax {
		return offer{}, false
	}
	return offer{k, fmt.Sprintf("wire %s from %s to %s", w.ID, w.Size, size), "size up", func(m *Model) (*model.Harness, string) {
		return m.written().EditWire(m.sheet.X.Wire[w.ID], func(w *model.Wire) { w.Size = size }), fmt.Sprintf("wire %s is now %s", w.ID, size)
	}, nil}, true
}

// endsTake reports whether the cavities at both ends of a wire take another size.
func (m *Model) endsTake(w model.Wire, size string) bool {
	for _, text := range []string{w.From.V, w.To.V} {
		e, ok := m.sheet.X.End(text)
		if t, known := m.sheet.X.Termination[e.Termination]; ok && known && !m.sheet.Takes(t, e.Cavity, w.Spec, size) {
			return false
		}
	}
	return true
}

// unitRows is loose wires that would lie rounder made up into a unit.
func (m *Model) unitRows() []row {
	var out []row
	_, b, _ := m.b()
	st := b.Standing
	for _, o := range m.units[m.sheet.PlanKey(m.branch)] {
		aloud := paper.Aloud(o.Counts, m.cfg.ASCII)
		out = append(out, row{
			key:    "unit " + strings.Join(o.Wires, " "),
			text:   fmt.Sprintf("%-8s%-8s%s of %s: %s, over %s", "any", "unit", o.Build, strings.Join(o.Wires, " "), aloud, m.sys.Diameter(o.Over)),
			detail: fmt.Sprintf("they run the same way; twisted first and laid as one, %s instead of %s. Enter makes it, the options follow", plural(o.Fillers, "filler", "fillers"), fmt.Sprint(o.Was().Fillers)),
			id:     o.Wires[0],
			why:    []reason{{made: func() (calc.Why, bool) { return calc.PlanOver(o.Plan, "over with that unit made up", st) }}},
			enter: func(m *Model) {
				id := m.h.NextID("U0")
				m.change(m.h.AddUnit(model.Unit{ID: id, Wires: o.Wires, Build: model.Some(o.Build)}), fmt.Sprintf("%s is a %s of %s", id, o.Build, strings.Join(o.Wires, " ")))
			},
		})
	}
	return out
}
