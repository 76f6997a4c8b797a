package tree

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/phase/wires"
	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// Places: terminations and breakouts on the map, and the page of what can be changed of one.

// PlaceKind is the page of a breakout, or of a termination as a place of the tree.
const PlaceKind desk.Kind = "place"

// stem is the twigs over what hangs on a branch, and none of its own.
func stem(m *desk.Model, k wires.Walk) string {
	all := []rune(twigs(m, append(slices.Clone(k.Last), true)))
	return string(all[:len(all)-2])
}

// bare are the places where no branch leads.
func bare(m *desk.Model) []string {
	var out []string
	for _, id := range slices.Concat(edit.IDs(m.H, edit.Termination), edit.IDs(m.H, edit.Breakout)) {
		if len(m.Sheet.Index.Meeting(id)) == 0 {
			out = append(out, id)
		}
	}
	return out
}

// placeRow is a place on the map: the termination that the tree is walked from, a breakout
// behind its branch, or a place where no branch leads.
func placeRow(m *desk.Model, id string, w int, twig string) desk.Row {
	noun := nounOf(m, id)
	parts := []string{id + clockText(m, id), placeName(m, id)}
	detail := "Enter opens it, + adds here, - changes it, . removes it"
	if len(m.Sheet.Index.Meeting(id)) == 0 && noun == edit.Termination {
		detail = "+ runs its trunk. Enter opens it, . removes it"
	}
	if noun == edit.Breakout {
		detail = "Enter opens it, + adds here, . removes it"
		parts = append(parts, closedText(m, id))
		for i := range m.H.Splices {
			if m.H.Splices[i].At == id {
				parts = append(parts, m.H.Splices[i].ID)
			}
		}
	}
	if len(m.Sheet.Index.Meeting(id)) == 0 {
		parts = append(parts, "no branch leads here")
	}
	text := strings.Join(slices.DeleteFunc(parts, func(p string) bool { return p == "" }), "  ")
	r := desk.Row{Key: "place " + id, Text: twig + draw.Fit(text, max(18, w-6-draw.Width(twig)), m.Cfg.ASCII),
		Mark: m.MarkFor(id), Detail: string(noun) + " " + id + ": " + detail,
		Step: func(m *desk.Model, by int) {
			if by < 0 {
				m.Show(PlaceKind, id)
				return
			}
			m.Tables.AddAt(m, id)
		},
		Drop: func(m *desk.Model) { removeThing(m, noun, id) }}
	r.Enter = func(m *desk.Model) { m.Show(PlaceKind, id) }
	if noun == edit.Termination {
		r.Enter = func(m *desk.Model) { m.Show(EndKind, id) }
	}
	return r
}

// nounOf is what kind of place an id is.
func nounOf(m *desk.Model, id string) edit.Noun {
	if _, is := m.Sheet.Index.Breakout[id]; is {
		return edit.Breakout
	}
	return edit.Termination
}

// closedText is how a breakout is closed.
func closedText(m *desk.Model, id string) string {
	b := &m.H.Breakouts[m.Sheet.Index.Breakout[id]]
	switch {
	case b.Transition.V != "":
		return "transition " + b.Transition.V
	case b.Build.V != "":
		return string(b.Build.V)
	}
	return ""
}

// PlacePage is what can be changed of a place: its name and id, how a breakout is closed, what
// meets there and what sits on it.
func PlacePage(m *desk.Model, _ int, id string) desk.Page {
	noun := nounOf(m, id)
	_, isEnd := m.Sheet.Index.Termination[id]
	if noun == edit.Termination && !isEnd {
		return desk.Page{Empty: id + " is gone. Esc goes back"}
	}
	meet := m.Sheet.Index.Meeting(id)
	p := desk.Page{Lines: []string{strings.TrimSpace(string(noun) + " " + id + "  " + placeName(m, id))}}
	p.Rows = append(p.Rows, nameRow(m, noun, id))
	if noun == edit.Breakout {
		p.Rows = append(p.Rows, closedRow(m, id), zoneRow(m, id))
	}
	p.Rows = append(append(p.Rows, placeRows(m, noun, id)...), desk.AllValuesRow(string(noun), id))
	for i := range m.H.Splices {
		if m.H.Splices[i].At == id {
			sid := m.H.Splices[i].ID
			p.Rows = append(p.Rows, desk.Row{Key: "splice " + sid, Mark: m.MarkFor(sid),
				Text:   label("splice", sid+"  joins "+desk.JoinText(m, i)),
				Detail: "Enter opens the splice, . removes it", Enter: func(m *desk.Model) { m.Show(SpliceKind, sid) },
				Drop: func(m *desk.Model) { removeThing(m, edit.Splice, sid) }})
		}
	}
	for _, k := range meet {
		bid := m.H.Branches[k].ID
		far := m.Sheet.Index.Other(k, id)
		p.Rows = append(p.Rows, desk.Row{Key: "branch " + bid, Mark: m.MarkFor(bid),
			Text:   label("branch", strings.TrimSpace(bid+" to "+far+"  "+m.H.Branches[k].Name.V)),
			Detail: "Enter or - opens what can be changed of " + bid,
			Enter:  func(m *desk.Model) { m.Show(ChangeKind, bid) },
			Step:   func(m *desk.Model, _ int) { m.Show(ChangeKind, bid) },
			Drop:   func(m *desk.Model) { removeBranch(m, bid, id) }})
	}
	return p
}

// placeRows rename a place, make another kind of place of it, and remove it. The page of a
// termination has them too.
func placeRows(m *desk.Model, noun edit.Noun, id string) []desk.Row {
	meet := m.Sheet.Index.Meeting(id)
	out := []desk.Row{RenameRow(m, noun, id)}
	switch {
	case noun == edit.Termination:
		detail := "Enter makes a breakout of it, under the same id"
		if ends := endingAt(m, id); len(ends) > 0 {
			detail = "Enter makes a breakout of it. Its wires lose that end: " + words.Few(ends)
		}
		out = append(out, desk.Row{Key: "breakout", Text: label("make it", "a breakout"), Detail: detail, Does: "make",
			Enter: func(m *desk.Model) {
				h, err := edit.ToBreakout(m.H, id, true)
				become(m, h, err, id, id+" is a breakout now. + on the map adds a leg to it")
			}})
	case len(meet) <= 1:
		out = append(out, desk.Row{Key: "termination", Text: label("make it", "a termination"), Does: "make",
			Detail: "Enter makes a termination of it, under the same id", Enter: func(m *desk.Model) {
				h, err := edit.ToTermination(m.H, id)
				become(m, h, err, id, id+" is a termination now. Its page has its cavities")
			}})
	case len(meet) == 2:
		out = append(out, joinRow(m, meet[0], id))
	}
	return append(out, desk.Row{Key: "remove", Text: label("remove", removesText(m, noun, id)), Does: "remove",
		Detail: "Enter or . removes it. Backspace brings it back whole",
		Enter:  func(m *desk.Model) { removeThing(m, noun, id) }, Drop: func(m *desk.Model) { removeThing(m, noun, id) }})
}

// removesText is what goes with a place.
func removesText(m *desk.Model, noun edit.Noun, id string) string {
	meet := m.Sheet.Index.Meeting(id)
	switch {
	case len(meet) == 1:
		return id + " and " + m.H.Branches[meet[0]].ID
	case len(meet) == 2 && noun == edit.Breakout:
		return id + ": its two branches become one"
	case len(meet) > 2 && noun == edit.Breakout:
		return id + ", once no more than two branches meet there"
	case len(meet) > 1:
		return id + ": a breakout stays, because branches meet there"
	}
	return id
}

// endingAt is the wires that end in a termination.
func endingAt(m *desk.Model, id string) []string {
	var out []string
	for _, r := range edit.References(m.H, edit.Termination, id) {
		if r.Noun == "wire" && (r.Key == "from" || r.Key == "to") && !slices.Contains(out, r.Owner) {
			out = append(out, r.Owner)
		}
	}
	return out
}

// become takes over a place that is of another kind now.
func become(m *desk.Model, h *model.Harness, err error, id, says string) {
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	lost := edit.Lost(m.H, h, id)
	if !changed(m, h, strings.Join(append([]string{says}, lost...), "; ")) {
		return
	}
	toMap(m, "place "+id)
}

// closedRow is how a breakout is closed: a moulded part of the catalogue, tape, or not at all.
func closedRow(m *desk.Model, id string) desk.Row {
	there := func(m *desk.Model) bool { _, is := m.Sheet.Index.Breakout[id]; return is }
	now := func(m *desk.Model) string {
		b := &m.H.Breakouts[m.Sheet.Index.Breakout[id]]
		return words.Either(b.Transition.V != "", b.Transition.V, string(b.Build.V))
	}
	take := func(m *desk.Model, v string) {
		m.Change(edit.EditBreakout(m.H, id, func(b *model.Breakout) {
			b.Transition, b.Build = model.Opt[string]{}, model.Opt[model.Closure]{}
			switch {
			case slices.Contains(model.Closures, model.Closure(v)):
				b.Build = model.Some(model.Closure(v))
			case v != "":
				b.Transition = model.Some(v)
			}
		}), id+" is "+words.Either(v == "", "closed by nothing that the file names",
			words.Either(slices.Contains(model.Closures, model.Closure(v)), v,
				"closed with "+v)))
	}
	list := func(m *desk.Model) []desk.Choice {
		out := []desk.Choice{{Value: string(model.ClosureTaped), Says: "taped"}, {Value: string(model.ClosureOpen), Says: "left open"}}
		for _, part := range m.Sheet.Cat.TransitionIDs() {
			t, _ := m.Sheet.Cat.Transition(part)
			out = append(out, desk.Choice{Value: part,
				Says: fmt.Sprintf("%s, %s", part, words.Plural(len(t.Outlets), "outlet", "outlets"))})
		}
		return out
	}
	return desk.Row{Key: "closed", Text: label("closed", words.OrDash(closedText(m, id))),
		Detail: "Enter lists transitions, tape and open. . takes it off",
		Enter:  func(m *desk.Model) { m.Open(desk.ChooseScreen("how "+id+" is closed", there, list, now, take, nil)) },
		Step: func(m *desk.Model, by int) {
			var all []string
			for _, c := range list(m) {
				all = append(all, c.Value)
			}
			if v, moved := words.Around(all, now(m), by); moved || now(m) == "" {
				take(m, v)
				return
			}
			m.Tell("there is no other")
		},
		Drop: func(m *desk.Model) { take(m, "") }}
}

// zoneRow is how far the wires lie straight and sorted from the centre of a breakout.
func zoneRow(m *desk.Model, id string) desk.Row {
	b := &m.H.Breakouts[m.Sheet.Index.Breakout[id]]
	zone, from := b.ZoneMM.V, ""
	if !b.ZoneMM.Set {
		zone, from = m.Sheet.Limits.ZoneMM, "  the shop's"
	}
	set := func(m *desk.Model, v model.Opt[unit.Millimetre], says string) {
		m.Change(edit.EditBreakout(m.H, id, func(b *model.Breakout) { b.ZoneMM = v }), says)
	}
	const most unit.Millimetre = 500 // more than any breakout takes up
	return desk.Row{Key: "zone", Text: label("sorted zone", m.Sys.Length(zone)+" "+m.Sys.Name()+from),
		Why:    given("sorted zone of "+id, zone),
		Detail: "Straight wires from the centre, along each branch. + - digits change it, . takes the shop's",
		Step: func(m *desk.Model, by int) {
			v := min(most, max(0, unit.Written(zone+unit.Millimetre(5*by))))
			set(m, model.Some(v), id+" is sorted over "+m.Sys.Length(v)+" "+m.Sys.Name())
		},
		Field: &desk.Field{Label: "sorted zone", Unit: m.Sys.Name(), Value: m.Sys.Length(zone), Number: true,
			Set: func(m *desk.Model, text string) error {
				v, err := m.Sys.Parse(text)
				if err != nil {
					return err
				}
				if v < 0 || v > most {
					return fmt.Errorf("%s %s is out of range: 0 to %s %s", text, m.Sys.Name(), m.Sys.Length(most), m.Sys.Name())
				}
				set(m, model.Some(v), id+" is sorted over "+text+" "+m.Sys.Name())
				return nil
			}},
		Drop: func(m *desk.Model) { set(m, model.Opt[unit.Millimetre]{}, id+" has the shop's sorted zone") }}
}
