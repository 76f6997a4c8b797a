package catalogue

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// chart is the column of contacts of the insert availability chart in a maker's MIL-DTL-38999
// series I/II/III catalogue, pp. 6-9, for the arrangements whose cavity names have a source.
const chart = `
8-35 6×22D, 9-94 2×20, 8-98 3×20, 11-2 2×16, 10-5 5×20, 10-35 13×22D, 11-54 4×22D, 10-98 6×20, 10-99 7×20,
12-4 4×16, 12-8 8×20, 12-35 22×22D, 12-98 10×20, 14-4 4×12, 14-5 5×16, 14-15 14×20+1×16, 14-18 18×20,
14-19 19×20, 14-35 37×22D, 14-97 8×20+4×16, 17-2 38×22D+1×8, 16-6 6×12, 16-8 8×16, 16-26 26×20, 16-35 55×22D,
16-99 21×20+2×16, 18-11 11×16, 19-18 14×22D+4×8, 18-28 26×20+2×16, 18-32 32×20, 18-35 66×22D, 20-11 11×12,
20-16 16×16, 21-29 19×20+4×16+4×12, 20-35 79×22D, 20-39 37×20+2×16, 20-41 41×20, 21-75 4×8, 21-79 17×22D+2×8,
23-6 6×8, 22-14 14×12, 22-21 21×16, 22-35 100×22D, 22-53 53×20, 23-54 40×22D+9×16+4×12, 22-55 55×20,
24-4 48×20+8×16, 25-7 97×22D+2×8, 25-8 8×8, 25-17 36×22D+6×8, 24-19 19×12, 25-20 10×20+13×16+4×12+3×8,
24-24 12×16+12×12, 24-29 29×16, 24-35 128×22D, 24-37 37×16, 24-43 23×20+20×16, 25-46 40×20+4×16+2×8,
25-90 40×20+4×16+2×8, 24-61 61×20, 7-D2 2×22D, 7-D3 3×22D, 7-D4 4×22D`

// What has a source is named by it, and has as many cavities of each contact size as the
// chart prints; the rest keep the rule, and say that it is from memory. The chart tells coax
// and twinax of size 8 in some arrangements only.
func TestNamesHaveASource(t *testing.T) {
	c := mustDefault(t)
	covered := map[string]string{}
	for _, row := range strings.Split(chart, ",") {
		id, contacts, _ := strings.Cut(strings.TrimSpace(row), " ")
		covered[id] = contacts
	}
	for _, id := range c.InsertIDs() {
		i, _ := c.Insert(id)
		want, ok := covered[id]
		if !ok {
			if i.NamesStanding != Memory || i.NamesSource != ruleOfNames || !slices.Equal(i.Cavities, cavityNames(i.Contacts)) {
				t.Errorf("%s has no source for its names: %s, %q, %v", id, i.NamesStanding, i.NamesSource, i.Cavities)
			}
			continue
		}
		delete(covered, id)
		if i.NamesStanding != Published || len(strings.Fields(i.NamesSource)) < 8 || i.NamesSource == i.Source {
			t.Errorf("%s: names stand %q, from %q", id, i.NamesStanding, i.NamesSource)
		}
		n := map[string]int{}
		for _, name := range i.Cavities {
			size, _, _ := strings.Cut(i.ContactSize(name), " ")
			n[size]++
		}
		var got []string
		for _, group := range strings.Split(want, "+") {
			_, size, _ := strings.Cut(group, "×")
			got = append(got, fmt.Sprintf("%d×%s", n[size], size))
			delete(n, size)
		}
		if g := strings.Join(got, "+"); g != want || len(n) > 0 {
			t.Errorf("%s has %s and %v, the chart %s", id, g, n, want)
		}
		for k, name := range i.Cavities[1:] {
			if !inOrder(i.Cavities[k], name) {
				t.Errorf("%s: %s stands after %s", id, name, i.Cavities[k])
			}
		}
	}
	if len(covered) > 0 {
		t.Errorf("without an entry: %v", covered)
	}
}

// inOrder is the order of the drawings: A to Z, a to z, AA, then numbers.
func inOrder(a, b string) bool {
	rank := func(s string) int {
		n, err := strconv.Atoi(s)
		switch {
		case err == nil:
			return 1000 + n
		case len(s) > 1:
			return 500 + int(s[0])
		}
		return int(s[0]) // capitals come before small letters
	}
	return rank(a) < rank(b)
}

// The 19 arrangements that the rule names wrongly: real cavities that it lacks, and false ones
// that it has. Sources: "two", a maker's arrangement chart put right by MIL-STD-1560, as taken
// over by a public data file, and the drawings of another maker's 38999 catalogue pp. 6-11, which
// agree; "drawing", those drawings alone.
func TestWhatTheRuleNamesWrongly(t *testing.T) {
	const letters = "A B C D E F G H J K L M N P R S T U V W X Y Z "
	const numbers = "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20 21 22 23 24 25 26 27 28 29 30 31 32 33 34 35 36 37 38 39 40 41 42"
	first := func(n int, of string) string { return strings.Join(strings.Fields(of)[:n], " ") }
	c := mustDefault(t)
	for _, tt := range []struct{ names, lacks, extra, source string }{
		{"11-54", "A B C D", "1 2 3 4", "two"},
		{"19-18", first(18, letters), first(18, numbers), "two"},
		{"21-79", first(19, letters), first(19, numbers), "two"},
		{"21-29", first(27, numbers), letters + "a b c d", "two"},
		{"25-17", letters + "a b c d e f g h k m n p q r s t u v w", numbers, "two"},
		{"25-20", "1 2 3 4 5 6 7", "a b c d e f g", "two"},
		{"20-39 21-39", "i", "s", "two"},
		{"20-41 21-41", "i", "u", "two"},
		{"22-53 23-53", "HH", "j", "two"},
		{"22-55 23-55", "i", "JJ", "two"},
		{"24-4 25-4", "LL", "j", "two"},
		{"24-43 25-43", "x", "j", "two"},
		{"24-61 25-61", "i", "RR", "two"},
		{"25-46", "AA", "j", "two"},
		{"25-90", "AA", "j", "two"},
		{"24-37 25-37", "r", "j", "drawing"},
		{"7-D2", "A B", "1 2", "drawing"},
		{"7-D3", "A B C", "1 2 3", "drawing"},
		{"7-D4", "A B C D", "1 2 3 4", "drawing"},
	} {
		for _, name := range strings.Fields(tt.names) {
			i, ok := c.Insert(name)
			if !ok {
				t.Errorf("no insert %s", name)
				continue
			}
			for _, missing := range strings.Fields(tt.lacks) {
				if !i.Has(missing) {
					t.Errorf("%s lacks its cavity %s", name, missing)
				}
			}
			for _, extra := range strings.Fields(tt.extra) {
				if i.Has(extra) {
					t.Errorf("%s has a cavity %s, which the part has not", name, extra)
				}
			}
			rule := cavityNames(i.Contacts)
			want := append(slices.DeleteFunc(rule, func(n string) bool { return slices.Contains(strings.Fields(tt.extra), n) }),
				strings.Fields(tt.lacks)...)
			if got := slices.Sorted(slices.Values(i.Cavities)); !slices.Equal(got, slices.Sorted(slices.Values(want))) {
				t.Errorf("%s: %v, want %v in any order", name, got, want)
			}
			if two := strings.Contains(i.NamesSource, "public data file"); two != (tt.source == "two") {
				t.Errorf("%s: its source is %q, want %s", name, i.NamesSource, tt.source)
			}
		}
	}
}

// Which cavity of a mixed arrangement has which size; the rest have the size given last. Source:
// a maker's arrangement chart put right by MIL-STD-1560, as taken over by a public data file.
func TestSizesOfMixedInserts(t *testing.T) {
	c := mustDefault(t)
	mixed := 0
	for _, tt := range []struct{ name, sizes, rest string }{
		{"15-15", "16: P", "20"},
		{"15-97", "16: C G L M", "20"},
		{"17-99", "16: W Z", "20"},
		{"19-28", "16: Z e", "20"},
		{"19-18", "8 twinax: B F K P", "22D"},
		{"17-2", "8 twinax: 39", "22D"},
		{"21-29", "12: 20 22 23 25; 16: 21 24 26 27", "20"},
		{"21-39", "16: m r", "20"},
		{"21-79", "8 coax: U V", "22D"},
		{"23-54", "12: 25 30 35 40; 16: 45 46 47 48 49 50 51 52 53", "22D"},
		{"25-4", "16: y z AA DD EE FF JJ LL", "20"},
		{"25-7", "8 twinax: 25 75", "22D"},
		{"25-17", "8 twinax: A D G K N S", "22D"},
		{"25-20", "20: B G L S V X 1 4 6 7; 12 coax: W 2 3 5; 8 twinax: A H K", "16"},
		{"25-24", "12: A B D E L M P R S T X Y", "16"},
		{"25-43", "16: a b c d e f g h k m n p q r s t u v w x", "20"},
		{"25-46", "16: v x y AA; 8 coax: w z", "20"},
		{"25-90", "16: v x y AA; 8 twinax: w z", "20"},
	} {
		i, _ := c.Insert(tt.name)
		want := map[string]string{}
		for _, part := range strings.Split(tt.sizes, "; ") {
			size, names, _ := strings.Cut(part, ": ")
			for _, name := range strings.Fields(names) {
				want[name] = size
			}
		}
		mixed++
		for _, name := range i.Cavities {
			size, ok := want[name]
			if !ok {
				size = tt.rest
			}
			if got := i.ContactSize(name); got != size {
				t.Errorf("%s:%s is of size %q, want %s", tt.name, name, got, size)
			}
			delete(want, name)
		}
		if len(want) > 0 {
			t.Errorf("%s lacks %v", tt.name, want)
		}
	}
	for _, id := range c.InsertIDs() {
		if i, _ := c.Insert(id); len(i.Contacts) > 1 && i.Contacts[0].Cavities != nil {
			mixed--
		}
	}
	if mixed != 0 {
		t.Errorf("%d mixed inserts more are checked than the catalogue sizes", mixed)
	}
}

func TestNamesList(t *testing.T) {
	for names, want := range map[string]string{
		"":                                 "",
		"A":                                "A",
		"A B":                              "A, B",
		"1 2 3 4":                          "1 to 4",
		"A B C D E F G H J K L":            "A to H, J to L",
		"Y Z a b c":                        "Y, Z, a to c", // Z and a do not follow each other
		"y z AA BB CC":                     "y, z, AA to CC",
		"X Y Z 1 2 3":                      "X to Z, 1 to 3",
		"9 10 11 13":                       "9 to 11, 13",
		"A CC E G J L N R T V X Z b d f h": "A, CC, E, G, J, L, N, R, T, V, X, Z, b, d and 2 more",
	} {
		if got := NamesList(strings.Fields(names)); got != want {
			t.Errorf("%s: %q, want %q", names, got, want)
		}
	}
}
