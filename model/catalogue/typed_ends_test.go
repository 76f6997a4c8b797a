package catalogue

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"contralay/model/typedtest"
)

func contactCells(k Contact) []cell {
	return []cell{
		{"max_a", float64(k.MaxA), k.Standing, at("contact", k.Size, "max_a")},
		{"well_mm", float64(k.WellMM), k.Standing, at("contact", k.Size, "well_deep_mm")},
		{"well_bore_mm", float64(k.WellBoreMM), k.Standing, at("contact", k.Size, "well_mm")},
		{"seal_min_mm", float64(k.SealMinMM), k.SealStanding, at("contact_seal", k.Size, "seal_min_mm")},
		{"seal_max_mm", float64(k.SealMaxMM), k.SealStanding, at("contact_seal", k.Size, "seal_max_mm")},
	}
}

// TestContactWords compares what of a contact is no figure: the gauges of MIL-DTL-38999N table IV,
// and the parts of the maker's list. Sizes 8, 4 and 0 are in no row of table IV for a plain wire.
func TestContactWords(t *testing.T) {
	c := mustDefault(t)
	for _, size := range c.ContactSizes() {
		k, _ := c.Contact(size)
		for _, x := range []struct{ what, got, table, column string }{
			{"smallest gauge", k.SmallestAWG, "contact_seal", "smallest_awg"},
			{"largest gauge", k.LargestAWG, "contact_seal", "largest_awg"},
			{"pin", k.Pin, "contact", "pin"},
			{"socket", k.Socket, "contact", "socket"},
			{"socket of series II", k.SocketII, "contact", "socket_ii"},
			{"plug", k.SealPlug, "contact", "plug"},
		} {
			want := text(x.table, size, x.column)
			if x.table == "contact_seal" && want == "" {
				continue
			}
			if x.got != want {
				t.Errorf("size %s: %s %q, typed %q", size, x.what, x.got, want)
			}
		}
	}
}

// insertCells is the counts of an arrangement: how many contacts of each size, and in all.
func insertCells(i Insert) []cell {
	cells := []cell{
		{"shell", float64(i.Shell), i.Standing, shellOf(i.ID)},
		{"cavities", float64(len(i.Cavities)), i.Standing, at("insert", i.ID, "cavities")},
	}
	want := map[string]float64{}
	for _, group := range strings.Split(text("insert", i.ID, "contacts"), "+") {
		n, size, _ := strings.Cut(group, "×")
		want[plainSize(size)], _ = strconv.ParseFloat(n, 64)
	}
	for _, g := range i.Contacts {
		w := typed{want[plainSize(g.Size)], 1e-9, typedtest.Read, "insert"}
		cells = append(cells, cell{"contacts of size " + g.Size, float64(g.Count), i.Standing, w})
	}
	return cells
}

// plainSize is a contact size without its kind, which the chart tells in some rows only.
func plainSize(size string) string {
	return strings.TrimSpace(strings.NewReplacer("twinax", "", "coax", "").Replace(size))
}

// TestInsertWords compares rating and names with the chart and the drawings, and which cavity has
// which size with the data file. A list of sizes names all but those of the commonest.
func TestInsertWords(t *testing.T) {
	c := mustDefault(t)
	for _, table := range []string{"insert", "insert_names", "insert_sizes"} {
		for _, name := range typedtest.Must(t, table).Rows {
			i, ok := c.Insert(name)
			if !ok {
				t.Errorf("no insert %s", name)
				continue
			}
			switch table {
			case "insert":
				series := "I/III"
				if strings.HasPrefix(name, fmt.Sprint(i.Shell, "-")) {
					series = "II"
				}
				nq := strings.Contains(strings.Join(i.NotQualified, " "), series) && (series == "II" || hasWord(i.NotQualified, "I/III"))
				if series == "II" {
					nq = hasWord(i.NotQualified, "II")
				}
				if want := text(table, name, "standing_in_chart") != ""; nq != want || i.Rating != text(table, name, "rating") {
					t.Errorf("%s: rating %q, not qualified %v; typed %q, %v", name, i.Rating, nq, text(table, name, "rating"), want)
				}
			case "insert_names":
				if got, want := strings.Join(i.Cavities, " "), text(table, name, "names"); got != want {
					t.Errorf("%s: names %s, typed %s", name, got, want)
				}
			case "insert_sizes":
				sizesAsTyped(t, i, name, text(table, name, "sizes"))
			}
		}
	}
}

func hasWord(all []string, word string) bool {
	for _, w := range all {
		if w == word {
			return true
		}
	}
	return false
}

// sizesAsTyped holds an arrangement to "12: 25 30; 16: 45-53; 20 the rest".
func sizesAsTyped(t *testing.T, i Insert, name, says string) {
	t.Helper()
	for _, part := range strings.Split(says, "; ") {
		size, names, listed := strings.Cut(part, ": ")
		if !listed {
			continue // "16 the rest"
		}
		names, _, _ = strings.Cut(names, " (")
		n := 0
		for _, one := range strings.Fields(names) {
			for _, cavity := range between(i, one) {
				n++
				if got := i.ContactSize(cavity); got != size && plainSize(got) != size {
					t.Errorf("%s:%s is of size %s, typed %s", name, cavity, got, size)
				}
			}
		}
		if n == 0 {
			t.Errorf("%s: nothing read of %q", name, part)
		}
	}
}

// between is the cavities of "45-53" or "a-x", or the one that is named.
func between(i Insert, says string) []string {
	from, to, isRange := strings.Cut(says, "-")
	if !isRange {
		return []string{says}
	}
	var out []string
	in := false
	for _, c := range i.Cavities {
		in = in || c == from
		if in {
			out = append(out, c)
		}
		if c == to {
			break
		}
	}
	return out
}

func spliceCells(s Splice) []cell {
	if n, butt := strings.CutPrefix(s.ID, "AS81824/1-"); butt {
		wall := at("splice_sleeve", "wall_mm", "value")
		return []cell{
			{"over_mm", float64(s.OverMM), s.Standing, at("splice", n, "barrel_max_mm").plus(wall.times(2)).rounded(1)},
			{"length_mm", float64(s.LengthMM), s.Standing, at("splice", n, "sleeve_long_mm")},
			{"cma_min", float64(s.CMAMin), s.Standing, at("splice", n, "cmil_min")},
			{"cma_max", float64(s.CMAMax), s.Standing, at("splice", n, "cmil_max")},
		}
	}
	n := strings.TrimPrefix(s.ID, "stub-")
	over := at("splice_stub", n, "barrel_max_mm").and(at("splice_stub", n, "cap_rec_mm"), func(a, b float64) float64 { return max(a, b) }).
		plus(at("splice_stub", n, "cap_wall_min_mm").times(2))
	return []cell{
		{"over_mm", float64(s.OverMM), s.Standing, over.rounded(2)},
		{"length_mm", float64(s.LengthMM), s.Standing, at("splice_stub", n, "cap_long_mm")},
		{"cma_min", float64(s.CMAMin), s.Standing, at("splice", n, "cmil_min")},
		{"cma_max", float64(s.CMAMax), s.Standing, at("splice", n, "cmil_max")},
	}
}

func faceCells(f Face) []cell {
	cells := []cell{{"rim", f.Rim, f.Standing, at("face_rim", f.ID, "rim")}}
	for _, p := range f.Places {
		row := f.ID + " " + p.Cavity
		cells = append(cells, cell{p.Cavity + " x", p.X, f.Standing, at("face", row, "x")},
			cell{p.Cavity + " y", p.Y, f.Standing, at("face", row, "y")})
	}
	return cells
}

func deviceCells(d Device) []cell {
	stands := func(k Taken) Standing {
		if k.Worked {
			return Memory // nobody printed it
		}
		return k.Standing
	}
	cells := []cell{{"cavities", float64(d.Cavities), d.Layout.Standing, at("device_cavities", d.ID, "cavities")}}
	for n, c := range d.Carries {
		row := fmt.Sprintf("%s row %d", d.ID, n+1)
		add := func(key string, got float64, is Taken) {
			cells = append(cells, cell{fmt.Sprintf("row %d %s", n+1, key), got, stands(is), at("device", row, key)})
		}
		add("amps", float64(c.Amps), c.AmpsIs)
		add("rest_a", float64(c.RestA), c.DutyIs)
		add("on_s", float64(c.OnS), c.DutyIs)
		add("period_s", float64(c.PeriodS), c.DutyIs)
		add("peak_a", float64(c.PeakA), c.PeakIs)
		add("peak_s", float64(c.PeakS), c.PeakIs)
		add("limit_a", float64(c.LimitA), c.LimitIs)
	}
	return cells
}
