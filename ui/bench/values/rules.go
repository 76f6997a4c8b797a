package values

import (
	"contralay/calc"
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/values/label"
	"contralay/ui/bench/words"
)

// The rules of a shop: each with its default beside it, and what it changes on this harness.

// ruleRow is a rule of the shop with its default beside it.
func ruleRow(m *desk.Model, k schema.Key, w int) desk.Row {
	r := keyRow(m, label.RulesAt, k, w)
	l := label.Of("rules", k.Name)
	if v := label.Default(k.Name); v != nil && schema.Get(m.H, label.RulesAt, k.Name) != nil {
		r.Text += "   default " + shown(m, k, l, v)
		r.Why = append(r.Why, reasons(m, k, l, v, "default")...)
	}
	return r
}

// effectRoom is how many lines are kept for the effect of a rule: rows do not jump with its length.
const effectRoom = 2

// effectLines say what the rule in hand changes on this harness. Where there is no room for them
// the row itself says it.
func effectLines(m *desk.Model, p *desk.Page, w int) []string {
	at := m.At(*p)
	e, known := desk.State[effects](m).Find(m.Sheet, 0, effectName(m, p.Rows[at].Key))
	p.Why = e.why
	if m.ListHeight() < 10 {
		if known && e.says != "" {
			p.Rows[at].Detail = e.says
		}
		return nil
	}
	lines := kit.Wrap(e.says, max(w-2, 10))
	for len(lines) < effectRoom {
		lines = append(lines, "")
	}
	return lines[:effectRoom]
}

// effect is what a rule changes on a harness: in one line, and the figures in it.
type effect struct {
	says string
	why  []desk.Reason
}

// effects are those of the rules that were in hand.
type effects struct{ desk.Kept[effect] }

// effectName is what the effect of a rule is kept under: it is worded in the unit of the screen.
func effectName(m *desk.Model, key string) string { return key + " " + m.Sys.Name() }

// Effect works out what the rule in hand changes on this harness, beside the screen: it takes a
// build of the whole harness.
func Effect(m *desk.Model) (desk.Work, bool) {
	s, ok := find(m.H, m.Subject())
	if !ok || s.at.Table() != "rules" || desk.Waiting(m.Sheet) { // lay-ups come first, or there is nothing to compare
		return desk.Work{}, false
	}
	_, r := m.Hand()
	if r == nil {
		return desk.Work{}, false
	}
	t, _ := schema.Find("rules")
	k, is := t.Key(r.Key)
	if !is {
		return desk.Work{}, false
	}
	name := effectName(m, k.Name)
	if _, known := desk.State[effects](m).Find(m.Sheet, 0, name); known {
		return desk.Work{}, false
	}
	now, l := m.Sheet, label.Of("rules", k.Name)
	other, says, ok := otherRule(m, k, l)
	compared := reasons(m, k, l, schema.Get(other, label.RulesAt, k.Name), "the rule that it is compared with")
	if !ok {
		desk.State[effects](m).Put(now, 0, name, effect{})
		return desk.Work{}, false
	}
	sys, cat := m.Sys, m.Cfg.Cat
	return desk.Work{Key: "rule\x00" + name, Do: func() func(m *desk.Model) {
		changes, why := differs(now, calc.Complete(other, cat, now), sys)
		e := effect{says + ": " + changes, append(why, compared...)}
		return func(m *desk.Model) { desk.State[effects](m).Put(now, 0, name, e) }
	}}, true
}

// otherRule is the harness that a rule is compared with: with the default where the shop has its
// own, else with what + gives.
func otherRule(m *desk.Model, k schema.Key, l label.Label) (h *model.Harness, says string, ok bool) {
	now, def := schema.Get(m.H, label.RulesAt, k.Name), label.Default(k.Name)
	var err error
	h = m.H
	switch {
	case now != nil:
		h, err = schema.Clear(m.H, label.RulesAt, k.Name)
		says = "Without it"
		if def != nil {
			says = "With the default " + shown(m, k, l, def)
		}
	case def == nil:
		return h, "", false
	default:
		next := nextOf(m, k, l, def)
		h, err = schema.Put(m.H, label.RulesAt, k.Name, next)
		says = "With " + shown(m, k, l, next)
	}
	return h, says, err == nil && h != m.H
}

// nextOf is what + gives from a value.
func nextOf(m *desk.Model, k schema.Key, l label.Label, v any) any {
	switch v := v.(type) {
	case float64:
		return nudged(m, k, l, v, 1)
	case int64:
		return v + 1
	case string:
		all := k.Words
		if l.From != nil {
			for _, c := range l.From(m, label.RulesAt) {
				all = append(all, c.Value)
			}
		}
		next, _ := words.Around(all, v, 1)
		return next
	}
	return v
}
