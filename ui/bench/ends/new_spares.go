package ends

import (
	"fmt"

	"contralay/calc/query/add"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// spareForm is spares on their way.
type spareForm struct {
	add.SparesAsk
	to string // a termination, or the place where they are capped
}

// ask is the form as it is asked for.
func (f *spareForm) ask(m *desk.Model) add.SparesAsk {
	a := f.SparesAsk
	if _, is := m.Sheet.Index.Termination[f.to]; is {
		a.To = f.to
	} else {
		a.CappedAt = f.to
	}
	return a
}

func askSpares(m *desk.Model, place string) {
	f := desk.State[spareForm](m)
	*f = spareForm{SparesAsk: add.SparesAsk{Count: 1, From: source(m, place), Spec: m.Sheet.Limits.Spec, Size: "22"}, to: place}
	if f.From == place { // of a connector: to where its branch ends
		f.to = ""
		for _, b := range m.Sheet.Index.Meeting(place) {
			f.to = m.Sheet.Index.Other(b, place)
		}
	}
	m.Show(SparesKind, place)
}

// SparesPage is spares before they are taken.
func SparesPage(m *desk.Model, _ int, place string) desk.Page {
	f := desk.State[spareForm](m)
	if f.From == "" {
		return desk.Page{Empty: "No connector is near that could hold them. Esc goes back"}
	}
	p := desk.Page{Lines: []string{"Spare wires: laid in now, for what comes later. Nothing is added before you take them."}}
	var ends, sizes []string
	for i := range m.H.Terminations {
		ends = append(ends, m.H.Terminations[i].ID)
	}
	for i := range m.H.Breakouts {
		ends = append(ends, m.H.Breakouts[i].ID)
	}
	sizes = m.Sheet.Cat.Sizes(f.Spec)
	p.Rows = []desk.Row{
		{Key: "count", Text: fmt.Sprintf("how many     %d", f.Count), Detail: "Digits or + - say how many",
			Step: func(m *desk.Model, by int) { f.Count = stepCount(m, f.Count, by) },
			Field: &desk.Field{Label: "how many", Number: true, Next: true, Set: func(m *desk.Model, text string) error {
				n, err := counted(text, "spares", mostDevices)
				if err == nil {
					f.Count = n
					m.Tell(words.Plural(n, "spare", "spares"))
				}
				return err
			}}},
	}
	got, err := add.Spares(m.Sheet, f.ask(m))
	take := desk.Row{Key: "take", Text: fmt.Sprintf("take %s", words.Plural(f.Count, "spare", "spares")), Detail: summary(got),
		Does: "take",
		Enter: func(m *desk.Model) {
			if err != nil {
				m.Refuse(err.Error())
				return
			}
			toMap(m)
			m.Change(got.H, summary(got))
		}}
	if err != nil {
		take.Mark, take.Detail = "!", err.Error()
	}
	p.Rows = append(p.Rows, take,
		desk.Row{Key: "from", Text: "from         " + f.From, Detail: "+ - which connector they start in",
			Step: func(_ *desk.Model, by int) { f.From, _ = words.Around(ends[:len(m.H.Terminations)], f.From, by) }},
		desk.Row{Key: "to", Text: "to           " + f.to, Detail: "+ - where they end: in a connector, or capped at a breakout",
			Step: func(_ *desk.Model, by int) { f.to, _ = words.Around(ends, f.to, by) }},
		desk.Row{Key: "size", Text: "size         " + f.Size, Detail: "+ - thinner or thicker",
			Step: func(_ *desk.Model, by int) { f.Size, _ = words.Around(sizes, f.Size, by) }})
	p.Rows = append(p.Rows, guessRows(m, got)...)
	return p
}
