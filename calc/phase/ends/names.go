package ends

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model/catalogue"
)

// whichItHas says which cavities a termination has, after one that it has not was named.
func whichItHas(s *sheet.Sheet, i int) string {
	t := &s.H.Terminations[i]
	if len(t.Cavities) > 0 {
		return "The file lists " + catalogue.NamesList(t.Cavities)
	}
	ins, _ := s.Cat.Insert(t.Insert.V)
	says := fmt.Sprintf("Insert %s has %s", t.Insert.V, catalogue.NamesList(ins.Cavities))
	if ins.NamesStanding == catalogue.Memory {
		says += ". These names are from memory: where the part has others, list its cavities in the file"
	}
	return says
}

// namesCavities stops where a termination reserves or sizes a cavity that it does not have,
// and notes where the names of its cavities have no source.
func namesCavities(s *sheet.Sheet, i int) {
	t, out := &s.H.Terminations[i], &s.Terms[i]
	if !hasCavities(s, i) || len(out.Cavities) == 0 {
		return
	}
	for _, c := range t.Reserved {
		if _, ok := out.State[t.CavityOf(c)]; !ok {
			s.Say(sheet.Stop, "cavity.none", t.ID,
				fmt.Sprintf("It reserves cavity %q, which it does not have. %s", c, whichItHas(s, i)))
		}
	}
	for _, size := range slices.Sorted(maps.Keys(t.Contacts)) {
		var lacks []string
		for _, c := range t.Contacts[size] {
			if _, ok := out.State[t.CavityOf(c)]; !ok {
				lacks = append(lacks, c)
			}
		}
		if len(lacks) > 0 {
			s.Say(sheet.Stop, "cavity.none", t.ID, fmt.Sprintf("It gives contact size %s to %s, which it does not have. %s", size,
				catalogue.NamesList(lacks), whichItHas(s, i)))
		}
	}
	ins, ok := s.Cat.Insert(t.Insert.V)
	if ok && len(t.Cavities) == 0 && ins.NamesStanding == catalogue.Memory {
		s.SayLike(sheet.Note, "insert.names", t.ID, ins.ID,
			fmt.Sprintf("The cavity names of insert %s are from memory: check them on the part, or list its cavities in the file",
				t.Insert.V))
	}
}

// contactsKnown notes that wires stand in contacts of a size that no catalogue has: what
// the insert or the file calls them is known, but not what they take.
func contactsKnown(s *sheet.Sheet, i int) {
	var unknown []string
	for _, name := range s.Terms[i].Cavities {
		c := s.Terms[i].State[name]
		if _, ok := s.Cat.Contact(c.Size); !ok && c.Size != "" && len(c.Wires) > 0 && !slices.Contains(unknown, c.Size) {
			unknown = append(unknown, c.Size)
		}
	}
	if len(unknown) > 0 {
		slices.Sort(unknown)
		sizes := strings.Join(unknown, " and ")
		s.SayLike(sheet.Note, "contact.part", s.H.Terminations[i].ID, sizes,
			fmt.Sprintf("Contacts of size %s are in no catalogue: whether the wires fit them and what they may carry is not judged", sizes))
	}
}
