package several

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/query/bulk"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// The screens of what is done with the marked wires; the page of wires is desk.KindSeveral.
const (
	MarkedKind desk.Kind = "marked wires"
	UnitKind   desk.Kind = "unit of the marked"
	SpliceKind desk.Kind = "splice of the marked"
)

// MarkedPage is what can be done with the marked wires; each row says for how many.
func MarkedPage(m *desk.Model, _ int, of string) desk.Page {
	ids := marked(m, of)
	n := len(ids)
	if n == 0 {
		return desk.Page{Empty: "No wire is marked. Esc goes back"}
	}
	p := desk.Page{Lines: []string{countText(n) + ": " + bulk.Named(ids)}}
	p.Rows = append(p.Rows, sizeRow(m, of, ids), specRow(m, of, ids))
	p.Rows = append(p.Rows, proposeRows(m, of, ids)...)
	p.Rows = append(p.Rows, colourRow(m, of, ids), roleRow(m, of, ids), currentRow(m, of, ids), moreRow(m, of, ids, false))
	if role, several := shared(m, ids, func(w *model.Wire) model.Role { return w.Role.V }); role == model.RoleSpare && !several {
		p.Rows = append(p.Rows, moreRow(m, of, ids, true))
	}
	p.Rows = append(p.Rows,
		desk.Row{Key: "unit", Text: label("unit") + "make a pair, triple or quad of " + pronoun(n), Detail: "Enter shows what it would be",
			Enter: func(m *desk.Model) { m.Show(UnitKind, of) }},
		desk.Row{Key: "splice", Text: label("splice") + "join " + pronoun(n) + ", with one wire on",
			Detail: "Enter shows where it would sit and what goes on from it", Enter: func(m *desk.Model) { m.Show(SpliceKind, of) }},
		desk.Row{Key: "remove", Text: label("remove") + pronoun(n), Detail: "Enter removes " + pronoun(n) + ". Backspace brings them back",
			Does: "remove", Enter: func(m *desk.Model) { remove(m, of) }, Drop: func(m *desk.Model) { remove(m, of) }})
	return p
}

func label(text string) string { return fmt.Sprintf("%-12s ", text) }

// pronoun is "it", "both", "all 4".
func pronoun(n int) string {
	switch n {
	case 1:
		return "it"
	case 2:
		return "both"
	}
	return fmt.Sprintf("all %d", n)
}

// there reports whether some wire of the page is marked still: an undo may take them away.
func there(of string) func(m *desk.Model) bool {
	return func(m *desk.Model) bool { return len(marked(m, of)) > 0 }
}

// done takes what was made of the marked wires, and says what was left.
func done(m *desk.Model, got bulk.Made, err error) bool {
	switch {
	case err != nil:
		m.Refuse(err.Error())
		return false
	case got.H == m.H && len(got.Left) > 0:
		m.Refuse(bulk.LeftText(got.Left))
		return false
	}
	was := m.H
	m.Change(got.H, got.Says)
	if m.H == was {
		return false
	}
	if left := bulk.LeftText(got.Left); left != "" {
		m.Refuse(got.Says + ". Left as it was: " + left)
	}
	return true
}

func set(m *desk.Model, of string, c bulk.Change) {
	got, err := bulk.Set(m.Sheet, marked(m, of), c)
	done(m, got, err)
}

// sizesOf are the sizes that every one of some specifications has, thin to thick.
func sizesOf(m *desk.Model, ids []string) []string {
	var out []string
	for n, id := range ids {
		all := m.Sheet.Cat.Sizes(m.H.Wires[m.Sheet.Index.Wire[id]].Spec)
		if n == 0 {
			out = slices.Clone(all)
		} else {
			out = slices.DeleteFunc(out, func(s string) bool { return !slices.Contains(all, s) })
		}
	}
	return out
}

func sizeRow(m *desk.Model, of string, ids []string) desk.Row {
	now, several := shared(m, ids, func(w *model.Wire) string { return w.Size })
	r := desk.Row{Key: "size", Text: label("size") + words.Either(several, "several sizes", model.SizeWords(now)),
		Detail: "+ - the next size for " + pronoun(len(ids)) + ". Enter lists the sizes",
		Enter: func(m *desk.Model) {
			m.Open(desk.ChooseScreen("size", there(of),
				func(m *desk.Model) []desk.Choice { return plain(sizesOf(m, marked(m, of)), model.SizeWords) },
				func(m *desk.Model) string { return words.Either(several, "", now) },
				func(m *desk.Model, v string) { set(m, of, bulk.Change{Size: model.Some(v)}) }, nil))
		}}
	r.Step = func(m *desk.Model, by int) {
		all := sizesOf(m, ids)
		k := slices.Index(all, now)
		switch {
		case several:
			m.Refuse("they have several sizes: press Enter and choose one for all")
		case k < 0 || k+by < 0 || k+by >= len(all):
			m.Tell(now + " is the last size that all of them can have")
		default:
			set(m, of, bulk.Change{Size: model.Some(all[k+by])})
		}
	}
	return r
}

// plain are choices as they stand.
func plain(all []string, says func(string) string) []desk.Choice {
	var out []desk.Choice
	for _, v := range all {
		out = append(out, desk.Choice{Value: v, Says: says(v)})
	}
	return out
}

func itself(s string) string { return s }

func specRow(m *desk.Model, of string, ids []string) desk.Row {
	now, several := shared(m, ids, func(w *model.Wire) string { return w.Spec })
	return desk.Row{Key: "spec", Text: label("spec") + words.Either(several, "several specifications", now),
		Detail: "+ - the next one for " + pronoun(len(ids)) + ". Enter lists them",
		Enter: func(m *desk.Model) {
			m.Open(desk.ChooseScreen("spec", there(of), func(m *desk.Model) []desk.Choice { return plain(m.Sheet.Cat.Specs(), itself) },
				func(m *desk.Model) string { return words.Either(several, "", now) },
				func(m *desk.Model, v string) { set(m, of, bulk.Change{Spec: model.Some(v)}) }, nil))
		},
		Step: func(m *desk.Model, by int) {
			if v, moved := words.Around(m.Sheet.Cat.Specs(), now, by); moved || several {
				set(m, of, bulk.Change{Spec: model.Some(v)})
			}
		}}
}

// proposed is the colours that were proposed, by what for.
type proposed struct{ desk.Kept[bulk.Coloured] }

// coloursFor proposes colours for wires, once for a sheet.
func coloursFor(m *desk.Model, ids []string, again bool) (bulk.Coloured, error) {
	name := fmt.Sprint(again, strings.Join(ids, "\x00"))
	if c, known := desk.State[proposed](m).Find(m.Sheet, 0, name); known {
		return c, nil
	}
	c, err := bulk.Colours(m.Sheet, bulk.ColourAsk{Wires: ids, Again: again})
	if err == nil {
		desk.State[proposed](m).Put(m.Sheet, 0, name, c)
	}
	return c, err
}

// proposeRows propose colours: for the wires that have none, and for all again.
func proposeRows(m *desk.Model, of string, ids []string) []desk.Row {
	var bare int
	for _, id := range ids {
		if m.H.Wires[m.Sheet.Index.Wire[id]].Colour.V == "" {
			bare++
		}
	}
	row := func(key, text string, again bool) desk.Row {
		return desk.Row{Key: key, Text: label("colours") + text, Does: "take",
			More: func() string {
				c, err := coloursFor(m, ids, again)
				if err != nil {
					return err.Error()
				}
				return words.Capital(coloursText(c))
			},
			Enter: func(m *desk.Model) {
				c, err := coloursFor(m, marked(m, of), again)
				if err != nil {
					m.Refuse(err.Error())
					return
				}
				m.Change(c.H, c.Text())
				if len(c.Lacks) > 0 {
					m.Refuse(c.Text())
				}
			}}
	}
	rows := []desk.Row{}
	if bare > 0 {
		rows = append(rows, row("propose", fmt.Sprintf("propose for the %d without one", bare), false))
	}
	if bare < len(ids) {
		rows = append(rows, row("propose again", "propose new ones for "+pronoun(len(ids)), true))
	}
	if c, err := coloursFor(m, ids, false); err == nil {
		for k, l := range c.Lacks {
			rows = append(rows, desk.Row{Key: fmt.Sprint("lack ", k), Mark: "?", Text: label("") + l.Says, Detail: l.Says})
		}
	}
	return rows
}

// coloursText is what would be taken, wire by wire as far as a line goes, and first what lacks.
func coloursText(c bulk.Coloured) string {
	var says []string
	for _, l := range c.Lacks {
		says = append(says, l.Says)
	}
	for k, id := range c.Wires {
		if k == 5 && len(c.Wires) > 6 {
			says = append(says, fmt.Sprintf("and %d more", len(c.Wires)-k))
			break
		}
		says = append(says, id+" "+model.ColourWords(c.Colours[k]))
	}
	if len(says) == 0 {
		return "nothing to change: no two are alike, every layer has a tracer"
	}
	return strings.Join(says, ", ")
}

func colourRow(m *desk.Model, of string, ids []string) desk.Row {
	now, several := shared(m, ids, func(w *model.Wire) string { return w.Colour.V })
	field := &desk.Field{Label: "colour of " + countText(len(ids)), ID: true, Set: func(m *desk.Model, text string) error {
		set(m, of, bulk.Change{Colour: model.Some(text)})
		return nil
	}}
	stock := m.Sheet.Limits.ColourStock
	return desk.Row{Key: "colour", Text: label("colour") + words.Either(several, "several", words.OrDash(paper.Colour(now))),
		Detail: "One colour for " + pronoun(len(ids)) + ". Enter lists the stock, digits type a code, . takes it away", Field: field,
		Step: func(m *desk.Model, by int) {
			c, _ := words.Around(stock, now, by)
			set(m, of, bulk.Change{Colour: model.Some(c)})
		},
		Drop: func(m *desk.Model) { set(m, of, bulk.Change{Colour: model.Some("")}) },
		Enter: func(m *desk.Model) {
			m.Open(desk.ChooseScreen("colour", there(of), func(m *desk.Model) []desk.Choice { return plain(stock, paper.Colour) },
				func(m *desk.Model) string { return words.Either(several, "", now) },
				func(m *desk.Model, v string) { set(m, of, bulk.Change{Colour: model.Some(v)}) }, field))
		}}
}

func roleRow(m *desk.Model, of string, ids []string) desk.Row {
	now, several := shared(m, ids, func(w *model.Wire) model.Role { return w.Role.V })
	return desk.Row{Key: "role", Text: label("role") + words.Either(several, "several", words.OrDash(string(now))),
		Detail: "+ - the next one for " + pronoun(len(ids)) + ". Enter lists them",
		Step: func(m *desk.Model, by int) {
			r, _ := words.Around(model.Roles, now, by)
			set(m, of, bulk.Change{Role: model.Some(r)})
		},
		Enter: func(m *desk.Model) {
			var all []string
			for _, r := range model.Roles {
				all = append(all, string(r))
			}
			m.Open(desk.ChooseScreen("role", there(of), func(m *desk.Model) []desk.Choice { return plain(all, itself) },
				func(m *desk.Model) string { return words.Either(several, "", string(now)) },
				func(m *desk.Model, v string) { set(m, of, bulk.Change{Role: model.Some(model.Role(v))}) }, nil))
		}}
}

func currentRow(m *desk.Model, of string, ids []string) desk.Row {
	now, several := shared(m, ids, func(w *model.Wire) model.Opt[unit.Ampere] { return w.Amps })
	text := words.Either(several, "several", "-")
	if now.Set && !several {
		text = words.Trim(float64(now.V)) + " A"
	}
	return desk.Row{Key: "current", Text: label("current") + text, Detail: "Digits set the current of " + pronoun(len(ids)),
		Field: &desk.Field{Label: "current of " + countText(len(ids)), Unit: "A", Number: true,
			Set: func(m *desk.Model, text string) error {
				v, err := unit.ParseNumber(text)
				if err != nil {
					return fmt.Errorf("type a number, 0 to %s A", unit.Fixed(bulk.MostAmps, 0))
				}
				got, err := bulk.Set(m.Sheet, marked(m, of), bulk.Change{Amps: model.Some(unit.Ampere(v))})
				if err != nil {
					return err
				}
				done(m, got, nil)
				return nil
			}}}
}

// moreRow makes more wires like each of the marked: one by Enter or +, several by a number.
func moreRow(m *desk.Model, of string, ids []string, deadEnd bool) desk.Row {
	key, text := "more", "one more like "+words.Either(len(ids) == 1, "it", "each")+", to the next cavities"
	if deadEnd {
		key, text = "more dead-ended", "the same, dead-ended where a cavity is lacking"
	}
	return desk.Row{Key: key, Text: label("more") + text, Detail: "Enter makes one. A number makes that many", Does: "make",
		Enter: func(m *desk.Model) { more(m, of, 1, deadEnd) },
		Step: func(m *desk.Model, by int) {
			if by < 0 {
				m.Tell("Backspace undoes it")
				return
			}
			more(m, of, 1, deadEnd)
		},
		Field: &desk.Field{Label: "how many more", Number: true, Set: func(m *desk.Model, text string) error {
			n, err := strconv.Atoi(text)
			if err != nil || n < 1 || n*len(ids) > bulk.MostAtOnce {
				return fmt.Errorf("type a whole number, 1 to %d", bulk.MostAtOnce/len(ids))
			}
			more(m, of, n, deadEnd)
			return nil
		}}}
}

// more makes n wires like each of the marked, as one change.
func more(m *desk.Model, of string, n int, deadEnd bool) {
	s, all := m.Sheet, bulk.Made{H: m.H}
	var short []string
	for _, id := range marked(m, of) {
		got, err := bulk.Like(s, bulk.LikeAsk{Wire: id, Count: n, DeadEnd: deadEnd})
		if err != nil {
			short = append(short, id+": "+err.Error())
			continue
		}
		if got.Short != "" {
			short = append(short, id+": "+got.Short)
		}
		all.H, all.Wires, all.Says = got.H, append(all.Wires, got.Wires...), got.Says
		s = m.Built(all.H)
	}
	if len(all.Wires) == 0 {
		m.Refuse(strings.Join(short, "; "))
		return
	}
	if len(all.Wires) > n || all.Says == "" {
		all.Says = countText(len(all.Wires)) + " more: " + bulk.Named(all.Wires)
	}
	if done(m, all, nil) && len(short) > 0 {
		m.Refuse(all.Says + ". No more, because " + strings.Join(short, "; "))
	}
}

func remove(m *desk.Model, of string) {
	got, err := bulk.Remove(m.Sheet, marked(m, of))
	if done(m, got, err) && len(marked(m, of)) == 0 {
		m.Back()
	}
}
