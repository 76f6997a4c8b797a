package values

import (
	"errors"
	"fmt"
	"strings"

	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
	"contralay/ui/bench/words"
)

// Changes, each one step to undo, through what the loader reads with.

// put gives a key of a record a value; what is wrong comes back in words.
func put(m *desk.Model, at schema.At, k schema.Key, value any) error {
	h, err := schema.Put(m.H, at, k.Name, value)
	if id, is := value.(string); is && len(at) == 1 && (k.Name == "id" || k.Name == "serial") {
		return rename(m, at, k, id)
	}
	if err == nil && at.Table() == "termination" && k.Name == "datum" {
		return redatum(m, at, value)
	}
	if err != nil {
		return said(m, at, err)
	}
	take(m, at, h, label.Of(at.Table(), k.Name).Says+": "+shown(m, k, label.Of(at.Table(), k.Name), value))
	if system, is := value.(string); is && at.Table() == "harness" && k.Name == "units" {
		if s, err := unit.ParseSystem(system); err == nil {
			m.Sys = s
		}
	}
	return nil
}

// rename gives a record another id, and keeps its pages in front.
func rename(m *desk.Model, at schema.At, k schema.Key, to string) error {
	h, keeps, err := renamed(m.H, at, k.Name, to)
	if err != nil {
		return said(m, at, err)
	}
	was := idOf(m.H, at)
	says := strings.Join(append([]string{label.Of(at.Table(), k.Name).Says + ": " + to}, keeps...), ". ")
	if serial := serialOf(m.H, at); serial != "" {
		says = "record of serial " + serial + ": " + says
	}
	desk.Renamed(m, h, says)
	follow(m, at, was, to, k.Name)
	return nil
}

// redatum moves where the length of a branch starts as the page of the termination does: the length
// is converted where the parts are known.
func redatum(m *desk.Model, at schema.At, value any) error {
	datum, _ := value.(string)
	h, converted := offer.Redatum(m.Sheet, at[0].Index, model.Datum(datum))
	says := "length from: " + datum
	if len(m.Sheet.Index.Meeting(m.H.Terminations[at[0].Index].ID)) > 0 {
		says += words.Either(converted, ", converted", ". The number stays, because the part's length is not known")
	}
	m.Change(h, says)
	return nil
}

// follow keeps the pages of a record in front when its id changes: they find it by that.
func follow(m *desk.Model, at schema.At, was, is, row string) {
	if idOf(m.H, at) != is {
		return // it was refused
	}
	from, to := desk.RecordOf(at[:1], was), desk.RecordOf(at[:1], is)
	for k := range m.Stack {
		s := &m.Stack[k]
		place, rest, _ := strings.Cut(s.Of, "\x00")
		id, rest, deeper := strings.Cut(rest, "\x00")
		if first, _, _ := strings.Cut(place, "."); first+"\x00"+id != from {
			continue
		}
		_, name, _ := strings.Cut(to, "\x00")
		if s.Of = place + "\x00" + name; deeper {
			s.Of += "\x00" + rest
		}
	}
	m.PutOn(row)
}

// take makes h the harness. What changes the record of a build says so.
func take(m *desk.Model, at schema.At, h *model.Harness, says string) {
	if serial := serialOf(m.H, at); serial != "" {
		says = "record of serial " + serial + ": " + says
	}
	m.Change(h, says)
}

// clear leaves a key out again.
func clear(m *desk.Model, at schema.At, k schema.Key) {
	l := label.Of(at.Table(), k.Name)
	if schema.Get(m.H, at, k.Name) == nil {
		m.Tell(l.Says + " is left out already")
		return
	}
	h, err := schema.Clear(m.H, at, k.Name)
	if err != nil {
		m.Refuse(said(m, at, err).Error())
		return
	}
	says := l.Says + " is left out now"
	if l.Left != nil {
		if v, by := l.Left(m, at, k.Name); v != nil {
			says = strings.TrimSpace(fmt.Sprintf("%s is left out: %s %s", l.Says, shown(m, k, l, v), by))
		}
	}
	take(m, at, h, says)
}

// outer is the record with an id that a refusal is about.
func outer(r *schema.Refused) string {
	table, _, _ := strings.Cut(r.Table, ".")
	return strings.TrimSpace(label.NounOf(table).One + " " + r.ID)
}

// said puts a refusal into the words of the screen: what is wrong, and what is allowed.
func said(m *desk.Model, at schema.At, err error) error {
	var r *schema.Refused
	if !errors.As(err, &r) {
		return err
	}
	table, where := r.Table, ""
	if table != at.Table() || r.ID != "" && r.ID != idOf(m.H, at) {
		where = outer(r)
	}
	if r.Key != "" {
		if where != "" {
			where += ", "
		}
		where += label.Of(table, r.Key).Says
	}
	text := strings.TrimSpace(where + ": " + strings.TrimPrefix(r.Says, "is "))
	if r.Allowed != "" {
		text += ". Allowed: " + r.Allowed
	}
	if m.Sys == unit.Inch {
		text = strings.ReplaceAll(text, "a number in mm", "a number in inches")
	}
	return errors.New(text)
}

// typed takes what was typed for a key.
func typed(m *desk.Model, at schema.At, k schema.Key, text string) error {
	was := schema.Get(m.H, at, k.Name)
	switch k.Kind {
	case schema.KindNumber, schema.KindCount:
		if text == "" {
			if k.Must {
				return fmt.Errorf("%s must be given: %s", label.Of(at.Table(), k.Name).Says, allowed(m, k))
			}
			clear(m, at, k)
			return nil
		}
		v, err := number(m, at, k, text)
		if err != nil {
			return err
		}
		if f, is := was.(float64); is && text == numberText(m, k, f) {
			return nil // as it is shown, which may be less fine than it is
		}
		return put(m, at, k, v)
	}
	if text == "" && was == nil {
		return nil
	}
	return put(m, at, k, text)
}

// number reads a number or a count that was typed.
func number(m *desk.Model, at schema.At, k schema.Key, text string) (any, error) {
	v, err := parse(m, k, text)
	if err != nil {
		return nil, fmt.Errorf("%w. Allowed: %s", err, allowed(m, k))
	}
	if k.Kind == schema.KindCount {
		if n := int64(v); float64(n) == v && n >= int64(k.Least) && n <= int64(k.Most) {
			return n, nil
		}
		return nil, fmt.Errorf("%s is not possible. Allowed: %s", text, allowed(m, k))
	}
	if !k.Holds(v) {
		return nil, fmt.Errorf("%s is out of range. Allowed: %s", text, allowed(m, k))
	}
	return v, nil
}

// allowed is what a key may be, in the unit of the screen.
func allowed(m *desk.Model, k schema.Key) string {
	if m.Sys == unit.Inch && isLength(k) {
		return strings.ReplaceAll(k.Allowed(), "in mm", "in inches")
	}
	return k.Allowed()
}
