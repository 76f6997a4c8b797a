package layers

import (
	"fmt"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// LayerKind is the screen of one layer.
const LayerKind desk.Kind = "layer"

// openLayer opens layer k. All layers of a branch share a cursor, so the screen is about none.
func openLayer(m *desk.Model, k int) {
	m.Open(desk.Screen{Kind: LayerKind, Page: func(m *desk.Model, _ int) desk.Page { return layerPage(m, k) }})
}

// layerPage is one layer: each member, and what can be set on the layer.
func layerPage(m *desk.Model, k int) desk.Page {
	mb, b, ok := m.BranchHere()
	if !ok || k >= len(b.Layers) {
		return desk.Page{Empty: "That layer is gone. Esc goes back"}
	}
	l := &b.Layers[k]
	p := desk.Page{Lines: []string{layerDetail(m, k, l), "+ moves it out, - moves it in, Enter pins it, point removes it"}}
	p.Why = desk.FiguresAt(mb.ID, k, layerFigures...)
	for j, c := range l.Members {
		if c.Kind == sheet.OfFiller {
			continue
		}
		id := c.ID
		name := ""
		if i, is := m.Sheet.Index.Wire[id]; is {
			name = fmt.Sprintf("%s  %s  %s", paper.Size(&m.H.Wires[i]), paper.Colour(m.H.Wires[i].Colour.V), m.H.Wires[i].Signal.V)
		} else if i, is := m.Sheet.Index.Unit[id]; is {
			name = m.H.Units[i].Name.V
		}
		pin := ""
		if pinned(m, k, id) {
			pin = "  (pinned)"
		}
		text := fmt.Sprintf("%2d  %-5s %s%s", j+1, id, name, pin)
		p.Rows = append(p.Rows, desk.Row{Text: text, Id: id, Key: id,
			Detail: fmt.Sprintf("%s, OD %s %s. Enter %s", id, m.Sys.Fine(c.D), m.Sys.Name(),
				words.Either(pin != "", "lets it move again", "pins it to this layer")),
			Why:   desk.FiguresIn(mb.ID, k, id, "component.over", "component.loss", "component.run"),
			Enter: func(m *desk.Model) { pinTo(m, k, id) },
			Step: func(m *desk.Model, by int) {
				if k+by < 0 {
					m.Tell("the centre is innermost")
					return
				}
				if move(m, id, k+by) { // the screen goes with it, so that - takes back what + did
					m.Back()
					openLayer(m, layerOf(m, id))
					m.PutOn(id)
				}
			},
			Drop: func(m *desk.Model) { move(m, id, -1) }})
	}
	locked := isLocked(m, k)
	p.Rows = append(p.Rows, desk.Row{Key: "locked", Text: "locked       " + words.Either(locked, "yes", "no"),
		Detail: "Lock a layer that is cut or tied: then no option and no move changes it",
		Step:   func(m *desk.Model, _ int) { lock(m, k, !locked) }})
	if k > 0 {
		p.Rows = append(p.Rows, desk.Row{Text: fmt.Sprintf("fillers      %d", l.Fillers),
			Detail: "White wire of the layer's own size. The step Fill also has stock sizes",
			Why:    desk.FiguresAt(mb.ID, k, "layer.filler"),
			Step:   func(m *desk.Model, by int) { addFiller(m, k, by, 0) }})
	}
	if l.LayMM > 0 {
		p.Rows = append(p.Rows, desk.Row{Big: m.Sys.Length(l.LayMM), BigSays: m.Sys.Name() + "  lay of " + model.LayerName(k),
			Text:   fmt.Sprintf("lay length   %s %s", m.Sys.Length(l.LayMM), m.Sys.Name()),
			Detail: m.Sys.Says("+ - 5 mm. 0 goes back to the shop rule"),
			Step:   layerStep(m, k, "lay length", 5, 2000, l.LayMM, func(l *model.Layer, v unit.Millimetre) { l.LayMM = model.Some(v) }),
			Why:    desk.FiguresAt(mb.ID, k, "layer.lay", "layer.turns"),
			Field:  layerField(m, k, "lay length", 0, 2000, func(l *model.Layer, v unit.Millimetre) { l.LayMM = model.Some(v) })})
	}
	binder, detail := "binder       ", "What tape or thread adds to the diameter. + - 0.05 mm"
	if k == 0 && len(b.Layers) > 1 {
		binder, detail = "built up by  ", "What tape round the centre adds to its diameter. + - 0.05 mm"
	}
	p.Rows = append(p.Rows, desk.Row{Key: "binder", Text: binder + m.Sys.Fine(bind(m, k)) + " " + m.Sys.Name(), Detail: m.Sys.Says(detail),
		Step:  layerStep(m, k, "binder", 0.05, 5, bind(m, k), func(l *model.Layer, v unit.Millimetre) { l.BindMM = model.Some(v) }),
		Field: layerField(m, k, "binder", 0, 5, func(l *model.Layer, v unit.Millimetre) { l.BindMM = model.Some(v) })})
	if bind(m, k) > 0 {
		part := b.As[k].BindPart.V
		p.Rows = append(p.Rows, desk.Row{Key: "tape", Text: "tape         " + words.OrDash(part),
			Detail: "Enter: which tape or thread it is",
			Field: &desk.Field{Label: "tape of " + model.LayerName(k), Value: part, Set: func(m *desk.Model, text string) error {
				m.Change(written(m).EditBranch(m.Branch, func(b *model.Branch) {
					if b.Layers[k].BindPart = model.Some(text); text == "" {
						b.Layers[k].BindPart = model.Opt[string]{}
					}
				}), "tape of "+model.LayerName(k)+" is "+words.OrDash(text))
				return nil
			}}})
	}
	if k < len(mb.Layers) { // one that is only proposed is in no file
		p.Rows = append(p.Rows, desk.AllValuesOf(schema.At{{Table: "branch", Index: m.Branch}, {Table: "layer", Index: k}}, mb.ID))
	}
	for n := range p.Rows {
		if p.Rows[n].Id == "" {
			p.Rows[n].Layer = model.Some(k)
		}
	}
	return p
}

// layerOf is the layer a component lies in now.
func layerOf(m *desk.Model, id string) int {
	_, b, _ := m.BranchHere()
	for k := range b.Layers {
		if slices.ContainsFunc(b.Layers[k].Members, func(c sheet.Member) bool { return c.ID == id }) {
			return k
		}
	}
	return 0
}

func isLocked(m *desk.Model, k int) bool {
	ls := m.H.Branches[m.Branch].Layers
	return k < len(ls) && ls[k].Locked.V
}

func lock(m *desk.Model, k int, on bool) {
	m.Change(written(m).EditBranch(m.Branch, func(b *model.Branch) { b.Layers[k].Locked = model.Some(on) }),
		model.LayerName(k)+words.Either(on, " is locked", " is unlocked"))
}

func pinned(m *desk.Model, k int, id string) bool {
	ls := m.H.Branches[m.Branch].Layers
	return k < len(ls) && slices.Contains(ls[k].Pinned, id)
}

// pinTo keeps a component in its layer, or lets it go.
func pinTo(m *desk.Model, k int, id string) {
	off := pinned(m, k, id)
	m.Change(written(m).EditBranch(m.Branch, func(b *model.Branch) {
		l := &b.Layers[k]
		if off {
			l.Pinned = slices.DeleteFunc(l.Pinned, func(o string) bool { return o == id })
		} else {
			l.Pinned = append(l.Pinned, id)
		}
	}), id+words.Either(off, " may move again", " is pinned to "+model.LayerName(k)))
}

func bind(m *desk.Model, k int) unit.Millimetre {
	if ls := m.H.Branches[m.Branch].Layers; k < len(ls) {
		return ls[k].BindMM.V
	}
	return 0
}

func layerField(m *desk.Model, k int, label string, least, most unit.Millimetre, set func(l *model.Layer, v unit.Millimetre)) *desk.Field {
	return &desk.Field{Label: label + " of " + model.LayerName(k), Unit: m.Sys.Name(), Number: true,
		Set: func(m *desk.Model, text string) error {
			v, err := m.Sys.Parse(text)
			if err != nil {
				return err
			}
			if v < least || v > most {
				return fmt.Errorf("%s is out of range: %s to %s %s", text, m.Sys.Length(least), m.Sys.Length(most), m.Sys.Name())
			}
			m.Change(written(m).EditBranch(m.Branch, func(b *model.Branch) { set(&b.Layers[k], v) }), label+" set")
			return nil
		}}
}

// layerStep changes a value of a layer by + -, in steps.
func layerStep(m *desk.Model, k int, label string, step, most, now unit.Millimetre,
	set func(l *model.Layer, v unit.Millimetre)) func(m *desk.Model, by int) {
	return func(m *desk.Model, by int) {
		v := unit.Millimetre(unit.RoundHalfUp(float64(now), float64(step))) + step*unit.Millimetre(by)
		if v < 0 || v > most {
			m.Tell(fmt.Sprintf("%s goes from 0 to %s mm", label, words.Trim(float64(most))))
			return
		}
		v = unit.Millimetre(unit.RoundHalfUp(float64(v), 0.001))
		m.Change(written(m).EditBranch(m.Branch, func(b *model.Branch) { set(&b.Layers[k], v) }), label+" "+m.Sys.Fine(v)+" "+m.Sys.Name())
	}
}

// addFiller puts fillers into a layer or takes them out; size 0 is the layer's
// smallest, or what its fillers are already.
func addFiller(m *desk.Model, k, by int, size unit.Millimetre) {
	h := written(m)
	l := h.Branches[m.Branch].Layers[k]
	n := l.Fillers.V + by
	if n < 0 {
		m.Tell("no filler in this layer")
		return
	}
	m.Change(h.EditBranch(m.Branch, func(b *model.Branch) {
		l := &b.Layers[k]
		l.Fillers = model.Some(n)
		if size > 0 {
			l.FillerMM = model.Some(unit.Written(size))
		}
		if n == 0 {
			l.Fillers, l.FillerMM = model.Opt[int]{}, model.Opt[unit.Millimetre]{}
		}
	}), fmt.Sprintf("fillers in %s: %d", model.LayerName(k), n))
}
