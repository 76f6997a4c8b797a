package inserts_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/inserts"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// of is so many wires of AS22759/32.
func of(count int, size string) inserts.Wire {
	return inserts.Wire{Spec: "AS22759/32", Size: size, Count: count}
}

// said is one fit in few words: "23-54 free 12: 22D 5, 16 5, 12 2; 4 20 AWG outside 16; 25-F4 leaves 13 more".
func said(f inserts.Fit) string {
	var left []string
	for _, l := range f.Left {
		left = append(left, fmt.Sprint(l.Size, " ", l.Count))
	}
	out := fmt.Sprintf("%s free %d: %s", f.Insert.ID, f.Free, strings.Join(left, ", "))
	for _, g := range f.Seals {
		out += fmt.Sprintf("; %d %s outside %s", g.Count, g.Says, g.Contact.Size)
	}
	if f.Larger != nil {
		out += fmt.Sprintf("; %s leaves %d more", f.Larger.ID, f.Larger.More)
	}
	return out
}

// Real questions, answered by hand from the chart of arrangements and the table of contacts: 22M takes
// 24 to 28 AWG and 0.76 to 1.27 mm, 22D 22 to 28 and 0.76 to 1.37, 22 22 to 26 and 0.86 to 1.52, 23 22
// to 26, 20 20 to 24 and 1.02 to 2.11, 16 16 to 20 and 1.65 to 2.77, 12 12 to 14 and 2.46 to 3.61.
// AS22759/32: 24 AWG 0.94 mm, 22 1.09, 20 1.27, 16 1.73, 12 2.62; AS22759/34: 22 AWG 1.27.
func TestRealQuestions(t *testing.T) {
	for _, c := range []struct {
		name  string
		want  inserts.Want
		fits  int // -1: not counted by hand
		first []string
	}{
		{"37 of 22 AWG fill a 14-35; 22M is too small for them and of 20 only the larger shells have 37",
			inserts.Want{Wires: []inserts.Wire{of(37, "22")}}, -1,
			[]string{"14-35 free 0: 22D 0; 16-35 leaves 18 more", "15-55 free 18: 23 18; 17-73 leaves 18 more",
				"16-42 free 5: 22 5; 18-53 leaves 11 more", "16-35 free 18: 22D 18; 18-35 leaves 11 more"}},
		{"24 AWG goes into 22M too; of two alike the one whose contacts carry more comes first",
			inserts.Want{Wires: []inserts.Wire{of(37, "24")}}, -1,
			[]string{"14-35 free 0: 22D 0; 16-35 leaves 18 more", "14-37 free 0: 22M 0; 16-55 leaves 18 more"}},
		{"six of 12 AWG: every arrangement with six or more of size 12",
			inserts.Want{Wires: []inserts.Wire{of(6, "12")}}, 6,
			[]string{"16-6 free 0: 12 0; 18-96 leaves 3 more", "18-96 free 3: 12 3; 20-11 leaves 2 more",
				"20-11 free 5: 12 5; 22-14 leaves 3 more", "22-14 free 8: 12 8; 24-19 leaves 5 more", "24-19 free 13: 12 13",
				"24-24 free 18: 16 12, 12 6"}},
		{"four of 16 AWG and eight of 20: 14-97 is made for it",
			inserts.Want{Wires: []inserts.Wire{of(8, "20"), of(4, "16")}}, -1, []string{"14-97 free 0: 20 0, 16 0; 21-29 leaves 15 more"}},
		{"twelve of 20 AWG, one of 16 and a spare: fourteen of 20 and one of 16",
			inserts.Want{Wires: []inserts.Wire{of(12, "20"), of(1, "16")}, Spares: 1}, -1,
			[]string{"14-15 free 1: 20 1, 16 0; 16-99 leaves 8 more"}},
		{"three shielded pairs take nine cavities: nineteen with ten wires",
			inserts.Want{Wires: []inserts.Wire{of(10, "22")}, Pairs: []inserts.Pair{{Wire: of(3, "24"), Shielded: true}}}, -1,
			[]string{"11-19 free 0: 23 0; 13-32 leaves 13 more", "12-35 free 3: 22D 3; 14-35 leaves 15 more"}},
		{"the same pairs without shields take six: sixteen",
			inserts.Want{Wires: []inserts.Wire{of(10, "22")}, Pairs: []inserts.Pair{{Wire: of(3, "24")}}}, -1,
			[]string{"11-19 free 3: 23 3; 13-32 leaves 13 more"}},
		{"only 12 seals 2.9 mm, and 20 AWG is thin for the seal of 16: two arrangements, both with a word on it",
			inserts.Want{Wires: []inserts.Wire{of(32, "22"), of(4, "20"), {OverMM: 2.9, Count: 2}}, Spares: 3}, 2,
			[]string{"23-54 free 12: 22D 5, 16 5, 12 2; 4 20 AWG outside 16; 25-F4 leaves 13 more",
				"25-F4 free 25: 22D 14, 16 9, 12 2; 4 20 AWG outside 16"}},
		{"heavier insulation, 1.27 mm, is still within the seal of 22D; 22M is too small for 22 AWG",
			inserts.Want{Wires: []inserts.Wire{{Spec: "AS22759/34", Size: "22", Count: 22}}}, -1,
			[]string{"12-35 free 0: 22D 0; 14-35 leaves 15 more"}},
		{"as much as the largest holds", inserts.Want{Wires: []inserts.Wire{of(187, "24")}}, 1, []string{"25-187 free 0: 23 0"}},
	} {
		a := inserts.Rank(calctest.Catalogue(t), c.want)
		if c.fits >= 0 && len(a.Fits) != c.fits || len(a.Fits) < len(c.first) || a.Nearest != nil {
			t.Errorf("%s: %d fit, want %d; nearest %v", c.name, len(a.Fits), c.fits, a.Nearest)
			continue
		}
		for n, want := range c.first {
			if got := said(a.Fits[n]); got != want {
				t.Errorf("%s:\n got %s\nwant %s", c.name, got, want)
			}
		}
	}
}

// Where nothing takes it, the answer says what no contact takes, or which arrangement comes nearest
// and what it lacks.
func TestNothingTakesIt(t *testing.T) {
	for _, c := range []struct {
		name        string
		want        inserts.Want
		none, lacks string
		nearest     string
	}{
		{"one wire more than the largest has", inserts.Want{Wires: []inserts.Wire{of(188, "24")}}, "", "1 24 AWG", "25-187"},
		{"2/0 is larger than every barrel", inserts.Want{Wires: []inserts.Wire{{Spec: "AS22759/34", Size: "2/0", Count: 2}}},
			"2 2/0 AWG thick", "", ""},
		{"30 AWG is smaller than every barrel", inserts.Want{Wires: []inserts.Wire{of(2, "30"), of(2, "22")}}, "2 30 AWG thin",
			"2 30 AWG", "7-D2"},
		{"no seal takes a jacket of 9 mm", inserts.Want{Wires: []inserts.Wire{{OverMM: 9, Count: 1}, of(6, "22")}}, "1 9 mm", "1 9 mm",
			"8-35"},
		{"nor one of no size", inserts.Want{Wires: []inserts.Wire{{Count: 1}}}, "1 0 mm", "", ""},
	} {
		a := inserts.Rank(calctest.Catalogue(t), c.want)
		var none, lacks []string
		for _, r := range a.None {
			text := fmt.Sprint(r.Count, " ", r.Says)
			if r.Thick {
				text += " thick"
			}
			if r.Thin {
				text += " thin"
			}
			none = append(none, text)
		}
		nearest := ""
		if a.Nearest != nil {
			nearest = a.Nearest.Insert.ID
			for _, k := range a.Nearest.Lacks {
				lacks = append(lacks, fmt.Sprint(k.Count, " ", k.Says))
			}
		}
		if len(a.Fits) > 0 || strings.Join(none, ", ") != c.none || strings.Join(lacks, ", ") != c.lacks || nearest != c.nearest {
			t.Errorf("%s: %d fit, none %q, nearest %s lacks %q; want %q, %s, %q", c.name, len(a.Fits), none, nearest, lacks, c.none,
				c.nearest, c.lacks)
		}
	}
}

// Eleven arrangements have coaxial or twinaxial contacts, of which the catalogue has none: counted in
// the chart. They are named, never ranked.
func TestNotJudgedIsNamedOnce(t *testing.T) {
	a := inserts.Rank(calctest.Catalogue(t), inserts.Want{Wires: []inserts.Wire{of(1, "22")}})
	const want = "17-2 19-18 21-75 21-79 23-6 25-7 25-8 25-17 25-20 25-46 25-90"
	if got := strings.Join(a.NotJudged, " "); got != want || strings.Join(a.Contacts, ", ") != "12 coax, 8 coax, 8 twinax" {
		t.Errorf("%s, contacts %v; want %s", got, a.Contacts, want)
	}
	for _, f := range a.Fits {
		if strings.Contains(" "+want+" ", " "+f.Insert.ID+" ") {
			t.Errorf("%s is ranked too", f.Insert.ID)
		}
	}
}

// A seal that the shop has confirmed refuses; one from memory only says so. A wire measured thicker
// on this job goes by what was measured.
func TestSeals(t *testing.T) {
	shelf := calctest.Catalogue(t)
	one := func(standing catalogue.Standing, over unit.Millimetre) inserts.Answer {
		k, _ := shelf.Contact("22D")
		k.SealStanding = standing
		cat := &catalogue.Catalogue{Wires: shelf.Wires, Contacts: map[string]catalogue.Contact{"22D": k},
			Inserts: map[string]catalogue.Insert{}}
		cat.Inserts["8-35"], _ = shelf.Insert("8-35")
		return inserts.Rank(cat, inserts.Want{Wires: []inserts.Wire{{Spec: "AS22759/32", Size: "22", OverMM: over, Count: 4}}})
	}
	for _, c := range []struct {
		standing    catalogue.Standing
		over        unit.Millimetre
		fits, seals int
	}{
		{catalogue.Memory, 0, 1, 0}, {catalogue.House, 0, 1, 0}, {catalogue.Memory, 1.4, 1, 1}, {catalogue.House, 1.4, 0, 0},
		{catalogue.Published, 0.75, 0, 0},
	} {
		a := one(c.standing, c.over)
		seals := 0
		for _, f := range a.Fits {
			seals += len(f.Seals)
		}
		if len(a.Fits) != c.fits || seals != c.seals {
			t.Errorf("seal %s, wire %.2f mm: %d fit with %d seals named, want %d and %d", c.standing, float64(c.over), len(a.Fits), seals,
				c.fits, c.seals)
		}
	}
}
