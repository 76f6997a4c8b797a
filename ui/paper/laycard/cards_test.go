package laycard_test

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/page"
)

// Every branch is on paper once: on pages of its layers, in a block, or as a row of the legs; each piece
// of it has one row, with the end that it runs to. The pages hold them as they are, none made smaller.
func TestEveryPieceOnce(t *testing.T) {
	for _, name := range []string{"../../../testdata/demo.toml", "../../../testdata/whole.toml", "../testdata/byhand.toml"} {
		m := load(t, name)
		set := page.Lay(laycard.Pages(m))
		if len(set.Squeezed) > 0 {
			t.Errorf("%s: %v", name, set.Squeezed)
		}
		var text strings.Builder
		for _, p := range set.Pages {
			text.WriteString(string(p.HTML))
		}
		rows := map[string]int{}
		for _, part := range strings.Split(text.String(), `<tr data-of="`)[1:] {
			id, cells, _ := strings.Cut(part, `"`)
			rows[id]++
			if id != "filler" && !strings.Contains(cells[:strings.Index(cells, "</tr>")], "</td><td") {
				t.Errorf("%s has no cells", id)
			}
		}
		want := map[string]int{}
		for _, c := range laycard.CardsOf(m) {
			pieces := map[string]bool{}
			for k, l := range c.Layers {
				if len(l.Rows) != len(m.S.Branches[c.Branch].Layers[k].Members) {
					t.Errorf("%s %s has %d rows of %d pieces", c.ID, l.Name, len(l.Rows), len(m.S.Branches[c.Branch].Layers[k].Members))
				}
				for _, r := range l.Rows {
					if r.Kind != sheet.OfFiller && (pieces[r.ID] || r.To == "" || r.To == "-") {
						t.Errorf("%s: %s stands there twice, or without its end %q", c.ID, r.ID, r.To)
					}
					pieces[r.ID] = true
				}
			}
			if len(c.Layers) == 1 && len(c.Layers[0].Rows) <= 5 {
				continue // a leg
			}
			for _, l := range c.Layers {
				for _, r := range l.Rows {
					want[r.ID]++
				}
			}
		}
		for id, n := range want {
			if rows[id] != n {
				t.Errorf("%s: %s has %d rows on paper, and runs through %d branches that have cards", name, id, rows[id], n)
			}
		}
	}
}

// The rows of a layer lie clockwise, seen from the from end, from the first of it on.
func TestRowsLieClockwise(t *testing.T) {
	for _, name := range []string{"demo", "whole"} {
		m := load(t, "../../../testdata/"+name+".toml")
		for _, c := range laycard.CardsOf(m) {
			for k, l := range c.Layers {
				if first := m.S.Branches[c.Branch].Layers[k].Members[0]; k > 0 && l.Rows[0].Of != first {
					t.Errorf("%s %s begins with %s, not with %s", c.ID, l.Name, l.Rows[0].ID, first.ID)
				}
				sum := 0.0
				for n, r := range l.Rows {
					o := l.Rows[(n+1)%len(l.Rows)]
					if len(l.Rows) < 3 || math.Hypot(float64(r.Of.X), float64(r.Of.Y)) < 1e-6 ||
						math.Hypot(float64(o.Of.X), float64(o.Of.Y)) < 1e-6 {
						sum = 2 * math.Pi
						break
					}
					sum += math.Mod(math.Atan2(float64(o.Of.X), float64(o.Of.Y))-math.Atan2(float64(r.Of.X), float64(r.Of.Y))+4*math.Pi,
						2*math.Pi)
				}
				if math.Abs(sum-2*math.Pi) > 1e-6 {
					t.Errorf("%s %s goes round %.2f times", c.ID, l.Name, sum/2/math.Pi)
				}
			}
		}
	}
}

var tags = regexp.MustCompile(`<[^>]*>`)

// A sentence stands once where it holds for all, and not where it does not hold.
func TestSaidOnce(t *testing.T) {
	m := load(t, "../../../testdata/demo.toml")
	var text strings.Builder
	for _, p := range page.Lay(laycard.Pages(m)).Pages {
		text.WriteString(string(p.HTML))
	}
	plain := strings.Join(strings.Fields(tags.ReplaceAllString(text.String(), " ")), " ")
	for says, n := range map[string]int{"the program proposes how: all but T1 and R1": 1,
		"zone of a breakout and one diameter before it": 1,
		"two rings are the tracer":                      1, "Fillers: ": 3, "they stop where the lay stops": 3} {
		if got := strings.Count(plain, says); got != n {
			t.Errorf("%q is said %d times, and should be %d", says, got, n)
		}
	}
	once := strings.Join(laycard.Once(hand(t), laycard.CardsOf(hand(t))), " ")
	for _, no := range []string{"proposes", "grey is filler, or tape"} {
		if strings.Contains(once, no) == (no == "proposes") {
			t.Errorf("%q in %s", no, once)
		}
	}
}
