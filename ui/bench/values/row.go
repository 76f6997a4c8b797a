package values

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// The row of one key.

// labelWidth is how many cells of a row of w cells the label has.
func labelWidth(w int) int { return min(max(w/3, 15), 22) }

func line(m *desk.Model, w int, says, value string) string {
	return draw.Fit(says, labelWidth(w), m.Cfg.ASCII) + " " + value
}

// keyRow is the row of a key of a record.
func keyRow(m *desk.Model, at schema.At, k schema.Key, w int) desk.Row {
	l := label.Of(at.Table(), k.Name)
	value := schema.Get(m.H, at, k.Name)
	text, by, holds := shown(m, k, l, value), "", value
	if value == nil && l.Left != nil {
		var left any
		if left, by = l.Left(m, at, k.Name); left != nil {
			text, holds = strings.TrimRight(shown(m, k, l, left)+"  "+by, " "), left
		}
	}
	r := desk.Row{Key: k.Name, Text: line(m, w, l.Says, text), Detail: m.Sys.Says(l.Does), Why: reasons(m, k, l, holds, by)}
	if value != nil && !k.Must {
		r.Drop = func(m *desk.Model) { clear(m, at, k) }
	}
	switch k.Kind {
	case schema.KindTable:
		r.Enter = func(m *desk.Model) { m.Show(desk.KindRecord, subject{at: at.In(k.Name, 0)}.String(m.H)) }
		return r
	case schema.KindTexts, schema.KindIDs, schema.KindWords, schema.KindNumbers, schema.KindPair, schema.KindMap,
		schema.KindEach:
		r.Enter = func(m *desk.Model) { m.Show(ItemsKind, subject{at: at, key: k.Name}.String(m.H)) }
		return r
	case schema.KindFlag:
		r.Step = func(m *desk.Model, _ int) { refuse(m, put(m, at, k, holds != true)) }
		r.Enter = choosing(m, at, k, l)
		return r
	case schema.KindChoice:
		r.Step = func(m *desk.Model, by int) { stepWord(m, at, k, k.Words, holds, by) }
		r.Enter = choosing(m, at, k, l)
		return r
	case schema.KindNumber, schema.KindCount:
		r.Step = func(m *desk.Model, by int) { stepNumber(m, at, k, l, holds, by) }
	}
	r.Field = fieldOf(m, at, k, l)
	if l.From != nil {
		r.Enter = choosing(m, at, k, l)
		if k.Kind == schema.KindID && !l.Taken {
			r.Step = func(m *desk.Model, by int) {
				var all []string
				for _, c := range l.From(m, at) {
					all = append(all, c.Value)
				}
				stepWord(m, at, k, all, holds, by)
			}
		}
	}
	return r
}

// fieldOf is the field in which a key is typed.
func fieldOf(m *desk.Model, at schema.At, k schema.Key, l label.Label) *desk.Field {
	f := &desk.Field{Label: l.Says + " of " + title(m.H, at), ID: k.Kind == schema.KindID,
		Set: func(m *desk.Model, text string) error { return typed(m, at, k, text) }}
	value := schema.Get(m.H, at, k.Name)
	switch k.Kind {
	case schema.KindNumber, schema.KindCount:
		f.Number, f.Unit = true, unitOf(m, k, l)
		switch v := value.(type) {
		case float64:
			f.Value = numberText(m, k, v)
		case int64:
			f.Value = fmt.Sprint(v)
		}
	default:
		f.Value, _ = value.(string)
	}
	return f
}

// choosing opens the list that a key is chosen from; what is not in it is typed.
func choosing(m *desk.Model, at schema.At, k schema.Key, l label.Label) func(m *desk.Model) {
	of := subject{at: at}.String(m.H)
	place := func(m *desk.Model) schema.At {
		s, _ := find(m.H, of)
		return s.at
	}
	there := func(m *desk.Model) bool { _, ok := find(m.H, of); return ok }
	list := func(m *desk.Model) []desk.Choice {
		switch {
		case k.Kind == schema.KindFlag:
			return label.These("yes", "no")
		case k.Kind == schema.KindChoice:
			return label.These(k.Words...)
		}
		return l.From(m, place(m))
	}
	now := func(m *desk.Model) string {
		switch v := schema.Get(m.H, place(m), k.Name).(type) {
		case string:
			return v
		case bool:
			return words.Either(v, "yes", "no")
		}
		return "\x00"
	}
	chosen := func(m *desk.Model, v string) {
		if k.Kind == schema.KindFlag {
			refuse(m, put(m, place(m), k, v == "yes"))
			return
		}
		refuse(m, put(m, place(m), k, v))
	}
	return func(m *desk.Model) {
		var other *desk.Field
		if k.Kind != schema.KindFlag && k.Kind != schema.KindChoice {
			other = fieldOf(m, at, k, l)
			if len(list(m)) == 0 {
				m.OpenField(*other, "")
				return
			}
		}
		m.Open(desk.ChooseScreen(l.Says, there, list, now, chosen, other))
	}
}

// refuse says what is wrong, where something is.
func refuse(m *desk.Model, err error) {
	if err != nil {
		m.Refuse(err.Error())
	}
}

// stepWord takes the next of some words.
func stepWord(m *desk.Model, at schema.At, k schema.Key, all []string, now any, by int) {
	cur, given := now.(string)
	next := ""
	switch {
	case len(all) == 0:
		m.Refuse("there is nothing to choose from yet")
		return
	case !given || !slices.Contains(all, cur):
		next = all[0]
		if by < 0 {
			next = all[len(all)-1]
		}
	default:
		var moved bool
		if next, moved = words.Around(all, cur, by); !moved {
			m.Tell(wordText(k.Name, cur) + " is the only one")
			return
		}
	}
	refuse(m, put(m, at, k, next))
}
