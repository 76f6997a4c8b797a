package catalogue

import (
	"strings"
	"testing"
)

// Where three cavities of an arrangement lie, typed by hand from the table of faces: the front of
// the pin insert as the table has it. The rear of the socket insert looks the same, the other two
// are its mirror image.
func TestFaceOfEachGender(t *testing.T) {
	c := mustDefault(t)
	typed := map[string][]Place{
		"10-5": {{"A", 0.5219, 0.6986}, {"C", 0.0459, -0.8459}, {"E", -0.4783, 0.6986}},
		"11-5": {{"A", 0.5219, 0.6986}, {"C", 0.0459, -0.8459}, {"E", -0.4783, 0.6986}}, // its name in series III
		"8-35": {{"1", 0.5180, 0.8554}, {"2", 0.8554, -0.4032}, {"4", -0.7660, -0.4100}},
		"9-98": {{"A", 0.7997, 0.4856}, {"B", 0.0517, -0.7294}, {"C", -0.9009, 0.4339}},
	}
	for _, side := range []struct {
		name  string
		Side  Side
		turns float64
	}{
		{"front of the pin", Side{Front: true}, 1}, {"rear of the pin", Side{}, -1},
		{"front of the socket", Side{Socket: true, Front: true}, -1}, {"rear of the socket", Side{Socket: true}, 1},
	} {
		for name, want := range typed {
			f, why := c.Face(name)
			if why != "" {
				t.Fatalf("%s: %s", name, why)
			}
			at := map[string]Place{}
			for _, p := range f.Seen(side.Side).Places {
				at[p.Cavity] = p
			}
			for _, w := range want {
				if got := at[w.Cavity]; got.X != side.turns*w.X || got.Y != w.Y {
					t.Errorf("%s, %s, cavity %s: at %v, %v; want %v, %v", name, side.name, w.Cavity, got.X, got.Y, side.turns*w.X, w.Y)
				}
			}
		}
	}
}

// The table has 63 arrangements and 1747 contacts. A face that is shown has the cavities of its
// arrangement and no others, none in the place of another and none outside its rim; one that is
// not shown says why.
func TestEveryFace(t *testing.T) {
	c := mustDefault(t)
	contacts := 0
	for _, f := range c.Faces {
		contacts += len(f.Places)
	}
	if len(c.Faces) != 63 || contacts != 1747 {
		t.Errorf("%d faces of %d contacts, want 63 of 1747", len(c.Faces), contacts)
	}
	shown, hidden := 0, map[string]string{}
	for _, id := range c.InsertIDs() {
		i, _ := c.Insert(id)
		f, why := c.Face(id)
		if why != "" {
			hidden[id] = why
			continue
		}
		shown++
		if len(f.Places) != len(i.Cavities) {
			t.Errorf("%s: %d places for %d cavities", id, len(f.Places), len(i.Cavities))
		}
		far := 0.0
		for k, p := range f.Places {
			if p.Cavity != i.Cavities[k] {
				t.Errorf("%s: place %d is of %s, want %s", id, k, p.Cavity, i.Cavities[k])
			}
			far = max(far, p.X*p.X+p.Y*p.Y)
			for _, q := range f.Places[:k] {
				if dx, dy := p.X-q.X, p.Y-q.Y; dx*dx+dy*dy < 0.01 {
					t.Errorf("%s: %s and %s are in one place", id, p.Cavity, q.Cavity)
				}
			}
		}
		if far < 0.99 || far > 1.01 {
			t.Errorf("%s: the outermost cavity lies at %.3f of its unit", id, far)
		}
	}
	if shown != 52 {
		t.Errorf("%d faces are shown, want 52: 63 less 4 unchecked less 7 that want a check by hand", shown)
	}
	for _, k := range []struct{ id, says string }{
		{"20-39", "asks for a check by hand"}, {"22-53", "asks for a check by hand"}, {"22-55", "J and j"},
		{"24-4", "asks for a check by hand"}, {"24-24", "asks for a check by hand"}, {"24-29", "asks for a check by hand"},
		{"24-61", "asks for a check by hand"}, {"14-37", "no face is known"},
	} {
		if !strings.Contains(hidden[k.id], k.says) {
			t.Errorf("%s: %q, want %q", k.id, hidden[k.id], k.says)
		}
	}
	if f, why := c.Face("99-99"); why == "" || len(f.Places) > 0 {
		t.Errorf("no insert of that name: %v %q", f, why)
	}
}

// A shop that gives an arrangement other cavities has no face of the old ones; it may give its own.
func TestFaceOfAShop(t *testing.T) {
	const insert = "[[insert]]\nid = \"8-98\"\ncontacts = [{ size = \"20\", count = 3 }]\ncavities = [\"1\", \"2\", \"3\"]\n" +
		"source = \"the part in hand\"\nstanding = \"house\"\n"
	const face = "[[face]]\nid = \"8-98\"\nrim = 1.5\ncavities = [\"1 0 1\", \"2 -0.5 0\", \"3 0.5 0.0\"]\n" +
		"source = \"the part in hand\"\nstanding = \"house\"\n"
	if _, why := Merge(mustDefault(t), mustRead(t, insert)).Face("9-98"); !strings.Contains(why, "other cavities") {
		t.Errorf("another insert: %q", why)
	}
	if f, why := Merge(mustDefault(t), mustRead(t, insert+face)).Face("9-98"); why != "" || f.Places[1] != (Place{"2", -0.5, 0}) {
		t.Errorf("a face of its own: %v %q", f, why)
	}
	for _, c := range []struct{ is, now, want string }{
		{`"2 -0.5 0"`, `"2 -0.5"`, `"2 -0.5" is no place`}, {`"2 -0.5 0"`, `"1 -0.5 0"`, `cavity "1" has two places`},
		{`"2 -0.5 0"`, `"2 nan 0"`, "is no place"}, {`"2 -0.5 0"`, `"2 0 9"`, "is no place"}, {"rim = 1.5", "rim = 0.5", "out of range"},
	} {
		if _, err := Read(strings.NewReader(strings.Replace(face, c.is, c.now, 1)), "shop.toml"); err == nil ||
			!strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, want %q", c.now, err, c.want)
		}
	}
}

// The marks of the chart, looked up by hand in the table of arrangements: 14-35 is qualified in
// both series, 14-19 in I and III alone, 13-26 in none that it exists in.
func TestQualified(t *testing.T) {
	c := mustDefault(t)
	for id, want := range map[string]string{
		"14-35": "", "14-37": "", "14-19": "not military-qualified in series II", "16-42": "not military-qualified in series I/III",
		"13-26": "not military-qualified", "14-4": "not military-qualified",
	} {
		i, _ := c.Insert(id)
		if all, says := i.Qualified(); says != want || all != (want == "") {
			t.Errorf("%s: %q, want %q", id, says, want)
		}
	}
	marked := 0
	for _, id := range c.InsertIDs() {
		i, _ := c.Insert(id)
		if strings.Contains(i.Source, "not military-qualified") != (len(i.NotQualified) > 0) {
			t.Errorf("%s: its source and its mark differ", id)
		}
		marked += len(i.NotQualified)
	}
	if marked != 44 { // counted in the chart: marks "nq", one for each series
		t.Errorf("%d marks, want 44", marked)
	}
}
