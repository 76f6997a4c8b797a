package catalogue

import (
	"strings"
	"testing"
)

// The names are from memory of MIL-STD-1560: what is checked is that the program
// keeps to the rule it states, not that the rule is right.
func TestCavityNames(t *testing.T) {
	for _, tt := range []struct {
		name   string
		groups []InsertContacts
		want   string
	}{
		{"small contacts number", []InsertContacts{{Size: "22D", Count: 6}}, "1 2 3 4 5 6"},
		{"mostly small contacts number", []InsertContacts{{Size: "22D", Count: 2}, {Size: "8", Count: 1}}, "1 2 3"},
		{"half small contacts are lettered", []InsertContacts{{Size: "22M", Count: 2}, {Size: "20", Count: 2}}, "A B C D"},
		{"no I, O or Q", []InsertContacts{{Size: "20", Count: 18}}, "A B C D E F G H J K L M N P R S T U"},
		{
			"small letters without i, l and o, then doubled", []InsertContacts{{Size: "20", Count: 48}},
			"A B C D E F G H J K L M N P R S T U V W X Y Z a b c d e f g h j k m n p q r s t u v w x y z AA BB",
		},
	} {
		if got := strings.Join(cavityNames(tt.groups), " "); got != tt.want {
			t.Errorf("%s:\n got %s\nwant %s", tt.name, got, tt.want)
		}
	}
}

func TestContactSize(t *testing.T) {
	c := mustDefault(t)
	for _, tt := range []struct{ insert, cavity, want string }{
		{"18-32", "A", "20"},   // source: insert availability chart, 32 × 20
		{"19-35", "66", "22D"}, // same, 66 × 22D
		{"18-32", "1", ""},     // no such cavity
		{"18-32", "", ""},
		{"18-30", "A", ""}, // 29 × 20 + 1 × 16: which is which is not known
	} {
		i, ok := c.Insert(tt.insert)
		if !ok {
			t.Fatalf("no insert %s", tt.insert)
		}
		if got := i.ContactSize(tt.cavity); got != tt.want {
			t.Errorf("%s %q is size %q, want %q", tt.insert, tt.cavity, got, tt.want)
		}
	}
	if got := (Insert{}).ContactSize("A"); got != "" {
		t.Errorf("an empty insert has a contact of size %q", got)
	}
}

func TestShopNamesCavities(t *testing.T) {
	c := mustRead(t, `[[insert]]
id       = "14-15"
shell    = 14
cavities = ["A", "B", "C"]
contacts = [{ size = "20", cavities = ["A", "C"] }, { size = "16", cavities = ["B"] }]
source   = "the drawing"
standing = "house"`)
	i, _ := c.Insert("14-15")
	if a, b := i.ContactSize("A"), i.ContactSize("B"); a != "20" || b != "16" {
		t.Errorf("A is %q, B is %q; want 20 and 16", a, b)
	}
	if i.NamesStanding != House || i.NamesSource != "the drawing" {
		t.Errorf("names that the shop gave stand %q from %q, want house, and the entry's source", i.NamesStanding, i.NamesSource)
	}
	c = mustRead(t, `[[insert]]
id       = "14-15"
contacts = [{ size = "20", count = 2 }]
names_source = "rung out on the part"
names_standing = "house"
source   = "the drawing"
standing = "published"`)
	if i, _ := c.Insert("14-15"); i.NamesSource != "rung out on the part" || i.NamesStanding != House {
		t.Errorf("the shop says where the names are from, and they stand %q from %q", i.NamesStanding, i.NamesSource)
	}
}
