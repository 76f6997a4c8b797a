package whatif_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model/file"
)

// demonstration is the sheet of the demonstration, and its trunk.
func demonstration(t testing.TB) (*sheet.Sheet, int) {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "..", "..", "cmd", "contralay", "demo.toml"))
	if err != nil {
		t.Fatal(err)
	}
	d, err := file.Parse(text, "demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	s := calc.Complete(&d.Harness, calctest.Catalogue(t), nil)
	return s, s.Index.Branch["T1"]
}

// forty is a branch of forty wires of three sizes that fork behind it, four of them spares.
func forty(t testing.TB) (*sheet.Sheet, int) {
	t.Helper()
	var b strings.Builder
	b.WriteString("format = 1\n[[breakout]]\nid = \"Y\"\n")
	var all []string
	for k := range 44 {
		all = append(all, fmt.Sprintf("%q", fmt.Sprint(k)))
	}
	for _, id := range []string{"S", "E0", "E1"} {
		fmt.Fprintf(&b, "[[termination]]\nid = %q\ncavities = [%s]\n", id, strings.Join(all, ", "))
	}
	for k := range 40 {
		size, more := "22", "amps = 0.5\n"
		switch {
		case k < 6:
			size, more = "20", "amps = 3.0\n"
		case k < 14:
			size = "24"
		case k >= 36:
			more = "amps = 0.0\nrole = \"spare\"\n"
		}
		fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"S:%d\"\nto = \"E%d:%d\"\nspec = \"AS22759/32\"\nsize = %q\n%s", k, k, k%2, k,
			size, more)
	}
	for _, branch := range []string{"STEM S Y", "ARM0 Y E0", "ARM1 Y E1"} {
		w := strings.Fields(branch)
		fmt.Fprintf(&b, "[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 400\n", w[0], w[1], w[2])
	}
	return calc.Complete(calctest.Parse(t, b.String()), calctest.Catalogue(t), nil), 0
}

// firstRows is the ways that a table shows first: of each kind the nearest on either side of the present.
func firstRows(s *sheet.Sheet, i int) (out []whatif.Value) {
	for _, k := range whatif.Kinds(s, i) {
		for _, n := range []int{k.Now - 1, k.Now + 1} {
			if n >= 0 && n < len(k.Values) {
				out = append(out, k.Values[n])
			}
		}
	}
	return out
}

var branches = map[string]func(testing.TB) (*sheet.Sheet, int){"demonstration": demonstration, "forty": forty}

// BenchmarkTable is every first row of a table, worked out beside one another.
func BenchmarkTable(b *testing.B) {
	for name, of := range branches {
		b.Run(name, func(b *testing.B) {
			s, i := of(b)
			rows := firstRows(s, i)
			b.ReportMetric(float64(len(rows)), "rows")
			for b.Loop() {
				sheet.Beside(len(rows), func(n int) {
					if t, err := whatif.Built(s, i, rows[n]); err == nil {
						whatif.FiguresOf(t, i)
					}
				})
			}
		})
	}
}

// BenchmarkRow is each first row by itself.
func BenchmarkRow(b *testing.B) {
	for name, of := range branches {
		s, i := of(b)
		for _, v := range firstRows(s, i) {
			b.Run(name+"/"+v.Key, func(b *testing.B) {
				for b.Loop() {
					whatif.Built(s, i, v)
				}
			})
		}
	}
}

// BenchmarkKinds is what there is to ask.
func BenchmarkKinds(b *testing.B) {
	for name, of := range branches {
		b.Run(name, func(b *testing.B) {
			s, i := of(b)
			for b.Loop() {
				whatif.Kinds(s, i)
			}
		})
	}
}
