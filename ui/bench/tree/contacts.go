package tree

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// What the contacts of a connector are judged by.

// contactRows are the gender of a connector, and the contact sizes of one that the catalogue does
// not have; nothing for an end that is no connector.
func contactRows(m *desk.Model, id string) []desk.Row {
	t := &m.H.Terminations[m.Sheet.Index.Termination[id]]
	var out []desk.Row
	if t.Insert.V != "" || t.Gender.V != "" || len(t.Cavities) > 1 {
		out = append(out, desk.Row{Key: "gender", Text: "gender       " + words.OrDash(string(t.Gender.V)),
			Detail: "+ - pin or socket. . removes it", Step: func(m *desk.Model, by int) {
				g, _ := words.Around(model.Genders, m.H.Terminations[m.Sheet.Index.Termination[id]].Gender.V, by)
				setGender(m, id, model.Some(g), id+" has "+string(g)+"s")
			}, Drop: func(m *desk.Model) {
				setGender(m, id, model.Opt[model.Gender]{}, "the gender of "+id+" is not given now")
			}})
	}
	if _, known := m.Sheet.Cat.Insert(t.Insert.V); known || len(m.Sheet.Terms[m.Sheet.Index.Termination[id]].Cavities) == 0 {
		return out
	}
	there := func(m *desk.Model) bool { _, ok := m.Sheet.Index.Termination[id]; return ok }
	return append(out, desk.Row{Key: "contacts", Text: "contacts     " + contactText(m, id),
		Detail: "Enter chooses a size for each cavity that has none", Enter: func(m *desk.Model) {
			if len(unsized(m, id)) == 0 {
				m.Refuse("each cavity of " + id + " has a contact size: . removes them")
				return
			}
			m.Open(desk.ChooseScreen("the contact size", there, contactChoices, func(*desk.Model) string { return "" },
				func(m *desk.Model, size string) {
					of := unsized(m, id)
					m.Change(m.H.EditTermination(m.Sheet.Index.Termination[id], func(t *model.Termination) {
						t.Contacts = maps.Clone(t.Contacts)
						if t.Contacts == nil {
							t.Contacts = map[string][]string{}
						}
						t.Contacts[size] = slices.Concat(t.Contacts[size], of)
					}), fmt.Sprintf("contacts of size %s in %s of %s", size, words.Plural(len(of), "cavity", "cavities"), id))
				}, nil))
		}, Drop: func(m *desk.Model) {
			m.Change(m.H.EditTermination(m.Sheet.Index.Termination[id], func(t *model.Termination) { t.Contacts = nil }),
				"the contact sizes of "+id+" are not given now")
		}})
}

func setGender(m *desk.Model, id string, g model.Opt[model.Gender], says string) {
	m.Change(m.H.EditTermination(m.Sheet.Index.Termination[id], func(t *model.Termination) { t.Gender = g }), says)
}

// unsized are the cavities of a termination whose contact size is not known.
func unsized(m *desk.Model, id string) []string {
	s := &m.Sheet.Terms[m.Sheet.Index.Termination[id]]
	var out []string
	for _, c := range s.Cavities {
		if s.State[c].Size == "" {
			out = append(out, c)
		}
	}
	return out
}

// contactText is how many cavities have contacts of each size.
func contactText(m *desk.Model, id string) string {
	s := &m.Sheet.Terms[m.Sheet.Index.Termination[id]]
	n := map[string]int{}
	for _, c := range s.Cavities {
		n[s.State[c].Size]++
	}
	var parts []string
	for _, size := range slices.Sorted(maps.Keys(n)) {
		if size != "" {
			parts = append(parts, fmt.Sprintf("%d of size %s", n[size], size))
		}
	}
	if n[""] > 0 {
		parts = append(parts, fmt.Sprintf("%d of a size not known", n[""]))
	}
	return strings.Join(parts, ", ")
}

// contactChoices are the sizes of contact that the catalogue has.
func contactChoices(m *desk.Model) []desk.Choice {
	used := map[string]int{}
	for i := range m.Sheet.Terms {
		for _, c := range m.Sheet.Terms[i].State {
			used[c.Size]++
		}
	}
	var out []desk.Choice
	for _, size := range m.Sheet.Cat.ContactSizes() {
		c, _ := m.Sheet.Cat.Contact(size)
		out = append(out, desk.Choice{Value: size, Says: fmt.Sprintf("size %s  takes %s to %s AWG", size, c.SmallestAWG, c.LargestAWG),
			Used: used[size]})
	}
	return out
}
