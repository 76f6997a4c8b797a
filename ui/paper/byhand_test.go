package paper

import (
	"encoding/csv"
	"encoding/json"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model/file"
	"contralay/ui/paper/figure"
)

// handLoom is a small loom whose lists were worked out by hand: testdata/byhand.txt has them with their sums.
func handLoom(t testing.TB) *sheet.Sheet {
	t.Helper()
	d, err := file.Load("testdata/byhand.toml")
	if err != nil {
		t.Fatal(err)
	}
	return laid(t, &d.Harness)
}

// handMade is the lists of a file of hand-made ones, by name: the first row is the columns compared.
func handMade(t testing.TB, name string) map[string][][]string {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	out := map[string][][]string{}
	list := ""
	for line := range strings.Lines(string(text)) {
		line = strings.TrimSpace(line)
		if name, is := strings.CutPrefix(line, "== "); is {
			list = name
		} else if line != "" && !strings.HasPrefix(line, "#") {
			cells := strings.Split(line, "|")
			for k := range cells {
				cells[k] = strings.TrimSpace(cells[k])
			}
			out[list] = append(out[list], cells)
		}
	}
	return out
}

// Every list of the loom is what was worked out by hand, literally, on paper and read back from its file.
func TestListsByHand(t *testing.T) {
	want := handMade(t, "testdata/byhand.txt")
	out := made(t, handLoom(t))
	for _, l := range out.Lists {
		rows, ok := want[l.File]
		if !ok {
			t.Errorf("nobody worked out the list %s by hand", l.File)
			continue
		}
		delete(want, l.File)
		text, err := CSV(l)
		if err != nil {
			t.Fatal(err)
		}
		back, err := csv.NewReader(strings.NewReader(string(text))).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		compareHand(t, l.File+" on paper", rows, append([][]string{l.Head}, l.Rows...))
		inFile, ok := want[l.File+", as a file"]
		if !ok { // it has the same columns, and nothing for a dash
			inFile = rows
		}
		compareHand(t, l.File+" as a file", inFile, back)
		delete(want, l.File+", as a file")
	}
	for name := range want {
		t.Errorf("there is no list %s", name)
	}
	if len(out.Without) > 0 {
		t.Errorf("without %v: a list without a row is not tested", out.Without)
	}
}

// compareHand compares the columns of the hand-made list with those of the same head, in their order; no other
// column holds a word, but those that are filled in at the bench and the name of the sheet.
func compareHand(t *testing.T, what string, want, got [][]string) {
	t.Helper()
	if len(got) != len(want) {
		t.Errorf("%s: %d rows, by hand %d", what, len(got)-1, len(want)-1)
		return
	}
	at := make([]int, len(want[0]))
	from := 0
	for k, head := range want[0] {
		at[k] = slices.Index(got[0][from:], head) + from
		if at[k] < from {
			t.Errorf("%s: no column %q after the ones before it in %q", what, head, got[0])
			return
		}
		from = at[k] + 1
	}
	for r, row := range got[1:] {
		for k := range want[0] {
			cell := ""
			if k < len(want[r+1]) {
				cell = want[r+1][k]
			}
			if row[at[k]] != cell && !(cell == "-" && row[at[k]] == "") {
				t.Errorf("%s, row %d (%s), %s: %q, by hand %q", what, r+1, row[0], want[0][k], row[at[k]], cell)
			}
		}
		for k, cell := range row {
			if cell != "" && !slices.Contains(at, k) && got[0][k] != SheetHead {
				t.Errorf("%s, row %d: nobody worked out %q, %q, by hand", what, r+1, got[0][k], cell)
			}
		}
	}
}

// Totals and masses by hand. The pair C1: 2 x 4.2 g/m x 1.00853, and braid and jacket from 2.18 to 2.9 mm,
// 2.5 g/cm3 x pi / 4 x (2.9^2 - 2.18^2) = 7.182: 15.653 g/m (the 2.5 from memory). T1: 0.4 x 15.653 + 2 x 6.4 x 0.40737
// + 8 x 4.2 x 0.40675 (4 wires, 4 fillers of the same wire) = 25.142. L1: 4 x 4.2 x 0.2 = 3.36. L2: 3 x 4.2 x 0.25 =
// 3.15. L3: (15.653 + 4.2) x 0.3 = 5.956. L4: (6.4 + 2 x 4.2) x 0.15 = 2.22.
func TestFiguresByHand(t *testing.T) {
	text, err := figure.All(handLoom(t))
	if err != nil {
		t.Fatal(err)
	}
	var fig struct {
		Totals struct {
			Wires, Units, Spares, Fillers int
			WireM                         float64  `json:"wire_m"`
			MassG                         *float64 `json:"mass_g"`
		}
		Branches []struct {
			ID    string
			MassG *float64 `json:"mass_g"`
		}
	}
	if err := json.Unmarshal(text, &fig); err != nil {
		t.Fatal(err)
	}
	f := fig.Totals
	if f.Wires != 13 || f.Units != 1 || f.Spares != 2 || f.Fillers != 4 || math.Abs(f.WireM-9.05) > 1e-9 {
		t.Errorf("%+v, by hand 13 wires, 1 unit, 2 spares, 4 fillers, 1.300 + 7.750 m", f)
	}
	if f.MassG == nil || math.Abs(*f.MassG-39.828) > 0.001 {
		t.Errorf("the loom weighs %v, by hand 25.142 + 3.36 + 3.15 + 5.956 + 2.22 = 39.828", f.MassG)
	}
	for k, want := range []float64{25.142, 3.36, 3.15, 5.956, 2.22} {
		if b := fig.Branches[k]; b.MassG == nil || math.Abs(*b.MassG-want) > 0.001 {
			t.Errorf("%s weighs %v, by hand %v", b.ID, b.MassG, want)
		}
	}
}
