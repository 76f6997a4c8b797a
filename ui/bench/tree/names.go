package tree

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/model"
	"contralay/model/edit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Names and ids: chosen from the trade's words with the next number, or typed.

// tradeNames are what the trade calls branches and places.
var tradeNames = map[edit.Noun][]string{
	edit.Branch: {"Trunk", "Rail", "Leg", "Spur", "Engine side", "Chassis side", "Left side", "Right side", "Front", "Rear", "Dash", "Roof",
		"Service loop"},
	edit.Termination: {"Bulkhead", "Bulkhead, engine side", "Bulkhead, chassis side", "Control unit", "Injector", "Coil", "Sensor",
		"Switch",
		"Fuse box", "Battery", "Ground point", "Test connector", "Flying lead"},
	edit.Breakout: {"Breakout", "Rail breakout", "Trunk breakout", "Engine breakout", "Dash breakout", "Splice station"},
}

// tradeIDs are the letters and words that ids begin with.
var tradeIDs = map[edit.Noun][]string{
	edit.Branch:      {"T", "R", "L", "B", "LEG", "RAIL", "TRUNK"},
	edit.Termination: {"P", "X", "ECU", "INJ", "COIL", "SENSOR", "SWITCH", "FUSES", "BATTERY", "GND", "BULKHEAD", "LEAD"},
	edit.Breakout:    {"J", "BR", "Y"},
	edit.Splice:      {"S", "SP"},
}

// numbered is a name with the next number that nothing in taken has; the first goes without.
func numbered(name string, taken []string) string {
	if !slices.Contains(taken, name) {
		return name
	}
	for n := 2; ; n++ {
		if next := name + " " + strconv.Itoa(n); !slices.Contains(taken, next) {
			return next
		}
	}
}

// nameOf is the name of a branch or a place.
func nameOf(h *model.Harness, noun edit.Noun, id string) string {
	k := slices.Index(edit.IDs(h, noun), id)
	switch {
	case k < 0:
		return ""
	case noun == edit.Branch:
		return h.Branches[k].Name.V
	case noun == edit.Breakout:
		return h.Breakouts[k].Name.V
	}
	return h.Terminations[k].Name.V
}

// named is a harness with another name of a branch or a place; "" is none.
func named(h *model.Harness, noun edit.Noun, id, name string) *model.Harness {
	v := model.Opt[string]{V: name, Set: name != ""}
	k := slices.Index(edit.IDs(h, noun), id)
	switch {
	case k < 0:
		return h
	case noun == edit.Branch:
		return h.EditBranch(k, func(b *model.Branch) { b.Name = v })
	case noun == edit.Breakout:
		return edit.EditBreakout(h, id, func(b *model.Breakout) { b.Name = v })
	}
	return h.EditTermination(k, func(t *model.Termination) { t.Name = v })
}

// nameRow gives a branch or a place a name.
func nameRow(m *desk.Model, noun edit.Noun, id string) desk.Row {
	there := func(m *desk.Model) bool { return slices.Contains(edit.IDs(m.H, noun), id) }
	now := func(m *desk.Model) string { return nameOf(m.H, noun, id) }
	take := func(m *desk.Model, name string) {
		m.Change(named(m.H, noun, id, name), words.Either(name == "", id+" has no name now", id+" is called "+name))
	}
	list := func(m *desk.Model) []desk.Choice {
		var taken []string
		for _, other := range edit.IDs(m.H, noun) {
			if other != id {
				taken = append(taken, nameOf(m.H, noun, other))
			}
		}
		var out []desk.Choice
		for _, name := range tradeNames[noun] {
			name = numbered(name, taken)
			out = append(out, desk.Choice{Value: name, Says: name})
		}
		return out
	}
	return desk.Row{Key: "name", Text: label("name", words.OrDash(now(m))), Detail: "Enter lists names, . takes it off",
		Drop: func(m *desk.Model) { take(m, "") },
		Enter: func(m *desk.Model) {
			m.Open(desk.ChooseScreen("the name of "+id, there, list, now, take, &desk.Field{Label: "name of " + id, Value: now(m),
				Set: func(m *desk.Model, text string) error { take(m, strings.TrimSpace(text)); return nil }}))
		}}
}

// RenameRow gives a thing another id. Whatever names it follows, and so do the pages about it.
func RenameRow(m *desk.Model, noun edit.Noun, id string) desk.Row {
	there := func(m *desk.Model) bool { return slices.Contains(edit.IDs(m.H, noun), id) }
	list := func(m *desk.Model) []desk.Choice {
		var out []desk.Choice
		for _, letters := range tradeIDs[noun] {
			to, own := m.H.FreeID(letters), 0
			if strings.TrimRight(id, "0123456789") == letters {
				own = 1
			}
			out = append(out, desk.Choice{Value: to, Says: to, Rank: own})
		}
		return out
	}
	take := func(m *desk.Model, to string) error {
		h, says, err := edit.Rename(m.H, noun, id, to)
		if err != nil {
			return err
		}
		desk.Renamed(m, h, strings.Join(append([]string{fmt.Sprintf("%s is %s now, everywhere", id, to)}, says...), "; "))
		follow(m, noun, id, to)
		return nil
	}
	return desk.Row{Key: "rename", Text: label("rename", id), Detail: "Enter lists ids with the next number. Whatever names it follows",
		Enter: func(m *desk.Model) {
			m.Open(desk.ChooseScreen("another id for "+id, there, list, func(*desk.Model) string { return id },
				func(m *desk.Model, to string) {
					if err := take(m, to); err != nil {
						m.Refuse(err.Error())
					}
				}, &desk.Field{Label: "id of " + id, Value: id, ID: true, Set: take}))
		}}
}

// about are the kinds of page of this family that are about one thing, and what it is.
var about = map[desk.Kind][]edit.Noun{PlaceKind: {edit.Termination, edit.Breakout}, EndKind: {edit.Termination},
	ChangeKind: {edit.Branch}, SplitKind: {edit.Branch}, SpliceKind: {edit.Splice}}

// follow keeps open the pages about a thing that has another id now. A page of another family is
// about a wire, a unit or a feed.
func follow(m *desk.Model, noun edit.Noun, id, to string) {
	for k := range m.Stack {
		s := &m.Stack[k]
		of, ours := about[s.Kind]
		if !ours {
			of = []edit.Noun{edit.Wire, edit.Unit, edit.Feed}
		}
		if s.Of == id && slices.Contains(of, noun) {
			s.Of = to
		}
	}
}
