package inserts

import (
	"fmt"
	"slices"
	"testing"

	"contralay/calc/calctest"
	"contralay/model/catalogue"
)

// The contacts of an arrangement stand small to large, those of one size counted together; a size that no catalogue has is named, and
// those behind it are there all the same. 22D is smaller than 20, and that than 16.
func TestContactsOfAnArrangement(t *testing.T) {
	cat := calctest.Catalogue(t)
	for _, c := range []struct {
		sizes         []string
		rooms, missed string
	}{
		{nil, "", "[]"}, {[]string{"20"}, "20 1;", "[]"}, {[]string{"16", "22D", "20"}, "22D 2;20 3;16 1;", "[]"},
		{[]string{"none", "20"}, "20 2;", "[none]"}, {[]string{"20", "none", "16", "nor this"}, "20 1;16 3;", "[none nor this]"},
		{[]string{"20", "16", "20"}, "20 4;16 2;", "[]"},
	} {
		var i catalogue.Insert
		for n, size := range c.sizes {
			i.Contacts = append(i.Contacts, catalogue.InsertContacts{Size: size, Count: n + 1})
		}
		got := ""
		rooms, missing := roomsOf(cat, i)
		for _, r := range rooms {
			got += fmt.Sprintf("%s %d;", r.contact.Size, r.count)
		}
		if got != c.rooms || fmt.Sprint(slices.Clone(missing)) != c.missed {
			t.Errorf("%v: %s missing %v, want %s %s", c.sizes, got, missing, c.rooms, c.missed)
		}
	}
}
