package runs

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/ui/bench/desk"
)

// Who works is chosen once when a run opens, and every tick carries the name. Who inspects has
// another: nobody signs for what he has built himself, but one who works alone and says so.

// WhoKind is the screen that asks who works.
const WhoKind desk.Kind = "who works"

// WhoPage lists the people of the shop, or with no list those who are on record in this file.
func WhoPage(m *desk.Model, _ int, _ string) desk.Page {
	p := desk.Page{Lines: []string{"Who works? Each tick carries the name."}}
	field := whoField(m)
	for _, who := range known(m) {
		p.Rows = append(p.Rows, desk.Row{Key: who, Text: named(m, who), Does: "take",
			Detail: "Enter: it is me. Or digits or a scanner: another", Enter: func(m *desk.Model) { works(m, who) }, Field: field})
	}
	text := "a name: type it"
	if len(p.Rows) > 0 {
		text = "another: type it"
	}
	p.Rows = append(p.Rows, desk.Row{Key: "type", Text: text, Detail: "Digits, a scanner, or Enter and a name", Field: field})
	return p
}

// whoField takes a name that is typed.
func whoField(m *desk.Model) *desk.Field {
	return &desk.Field{Label: "who works", Scan: true, Set: func(m *desk.Model, text string) error {
		p, err := person(m, text)
		if err != nil {
			return err
		}
		works(m, p.ID)
		return nil
	}}
}

// works writes down who works from here on, and goes on with the run.
func works(m *desk.Model, who string) {
	state(m).who = who
	m.Back()
	if m.Top() != RunKind {
		goOn(m)
	}
	m.Unput() // the next key does the step
	m.Tell(named(m, who) + " works")
}

// known are the ids of those who may be meant: the shop's people, or with no list everybody on
// record here, the last first.
func known(m *desk.Model) []string {
	var out []string
	add := func(who string) {
		if who != "" && !slices.Contains(out, who) {
			out = append(out, who)
		}
	}
	for _, p := range m.Cfg.Cat.People {
		add(p.ID)
	}
	if len(out) > 0 {
		return out
	}
	for k := len(m.H.Builds) - 1; k >= 0; k-- {
		b := &m.H.Builds[k]
		for n := len(b.Steps) - 1; n >= 0; n-- {
			add(b.Steps[n].By.V)
		}
		for n := len(b.Signed) - 1; n >= 0; n-- {
			add(b.Signed[n].By)
		}
	}
	return out
}

// named is somebody by number and name.
func named(m *desk.Model, who string) string {
	p, _ := m.Cfg.Cat.Person(who)
	return strings.TrimSpace(who + "  " + p.Name)
}

// person is who a text names: somebody of the shop's list by number or name; with no list any text
// is a name.
func person(m *desk.Model, text string) (catalogue.Person, error) {
	if text == "" {
		return catalogue.Person{}, fmt.Errorf("type your number or name")
	}
	all := m.Cfg.Cat.People
	if len(all) == 0 {
		return catalogue.Person{ID: text, MayInspect: true}, nil
	}
	var names []string
	for _, p := range all {
		if p.ID == text || strings.EqualFold(p.Name, text) {
			return p, nil
		}
		names = append(names, p.ID+" "+p.Name)
	}
	return catalogue.Person{}, fmt.Errorf("%s is not in the shop's list. In it: %s", text, strings.Join(names, ", "))
}

// whoRow changes who works.
func whoRow(m *desk.Model) desk.Row {
	return desk.Row{Key: "who", Text: "who works  " + cmp.Or(named(m, state(m).who), "-"),
		Detail: "Enter: somebody else works from here on", Enter: func(m *desk.Model) { m.Show(WhoKind, "") }}
}

// inspector is who signs a hold. Somebody who has ticked what it is signed for may not; nor one whom
// the shop's list does not let. Anybody may sign that a sheet with stops is built.
func inspector(m *desk.Model, s run.RunStep, b *model.Build, text string) (string, error) {
	if text == "" {
		return "", fmt.Errorf("a hold needs a signature: your number or name")
	}
	p, err := person(m, text)
	switch {
	case err != nil:
		return "", err
	case s.Key == run.HoldStops:
		return p.ID, nil
	case !p.MayInspect:
		return "", fmt.Errorf("%s may not inspect, by the shop's list%s", named(m, p.ID), inspectors(m))
	case hasBuilt(b, p.ID):
		return "", fmt.Errorf("%s has built it, and may not inspect it. Another name, or the row: I work alone", named(m, p.ID))
	}
	return p.ID, nil
}

// inspectors are those who may inspect, for a sentence.
func inspectors(m *desk.Model) string {
	var out []string
	for _, p := range m.Cfg.Cat.People {
		if p.MayInspect {
			out = append(out, named(m, p.ID))
		}
	}
	if len(out) == 0 {
		return ", nor may anybody in it"
	}
	return ". Who may: " + strings.Join(out, ", ")
}

// hasBuilt reports whether somebody has ticked work of a build.
func hasBuilt(b *model.Build, who string) bool {
	return slices.ContainsFunc(b.Steps, func(t model.Ticked) bool {
		return t.By.V == who && !t.Undone.Set && !strings.HasPrefix(t.Key, "hold ")
	})
}

// aloneSays is the concession of one who inspects what he has built.
const aloneSays = "inspected by the one who built it: nobody else works here"

// aloneRow signs for one who works alone; the record says so.
func aloneRow(m *desk.Model, s run.RunStep) desk.Row {
	return desk.Row{Key: "alone", Text: "I work alone: sign as " + named(m, state(m).who), Does: "sign",
		Detail: "Enter signs, and writes down as a concession that nobody else has inspected it",
		Enter: func(m *desk.Model) {
			who := state(m).who
			sign(m, s, who, func(b *model.Build) {
				d := model.Deviation{At: s.Name, Says: aloneSays, Step: model.Some(s.Key), By: model.Some(who)}
				if on := now(m); on != "" {
					d.On = model.Some(on)
				}
				b.Apart = append(b.Apart, d)
			})
			m.Unput()
		}}
}

// sign passes a hold.
func sign(m *desk.Model, s run.RunStep, who string, more func(b *model.Build)) {
	tick(m, func(b *model.Build) {
		g := model.Signature{Step: s.Key, By: who}
		if at := now(m); at != "" {
			g.At = model.Some(at)
		}
		b.Signed = append(slices.DeleteFunc(b.Signed, func(o model.Signature) bool { return o.Step == s.Key }), g)
		if more != nil {
			more(b)
		}
	})
}
