package catalogue

import (
	"fmt"
	"strings"
	"testing"
)

// printedTotals is the column of totals of the insert availability chart in a
// maker's MIL-DTL-38999 series I/II/III catalogue: series II name, series I/III
// name, total. The sizes of the contacts stand in another column of that chart.
const printedTotals = `
8-2 2, 8-3/9-3 3, 8-6/9-6 6, 9-7 7, 8-35/9-35 6, 8-44/9-44 4, 9-94 2, 9-22 2, 8-97 4, 
8-98/9-98 3, 11-2 2, 10-4/11-4 4, 10-5/11-5 5, 11-6 6, 10-13/11-13 13, 10-35/11-35 13, 
11-54 4, 10-98/11-98 6, 10-99/11-99 7, 12-3/13-3 3, 12-4/13-4 4, 12-8/13-8 8, 12-22/13-22 22, 
13-26 8, 12-35/13-35 22, 12-98/13-98 10, 14-4/15-4 4, 14-5/15-5 5, 14-15/15-15 15, 
14-18/15-18 18, 14-19/15-19 19, 14-35/15-35 37, 14-37/15-37 37, 14-68/15-68 8, 
14-97/15-97 12, 17-2 39, 16-6/17-6 6, 16-8/17-8 8, 16-13/17-13 13, 16-26/17-26 26, 
16-35/17-35 55, 16-42/17-42 42, 16-55/17-55 55, 16-99/17-99 23, 18-11/19-11 11, 19-18 18, 
18-28/19-28 28, 18-30/19-30 30, 18-32/19-32 32, 18-35/19-35 66, 18-53/19-53 53, 
18-66/19-66 66, 19-67 67, 18-68/19-68 18, 18-96 9, 20-1/21-1 79, 20-2/21-2 65, 
20-11/21-11 11, 20-16/21-16 16, 21-25 25, 21-27 27, 21-29 27, 20-35/21-35 79, 20-39/21-39 39, 
20-41/21-41 41, 21-75 4, 21-79 19, 22-1/23-1 100, 22-2/23-2 85, 23-6 6, 22-14/23-14 14, 
22-21/23-21 21, 22-32/23-32 32, 23-34 34, 22-35/23-35 100, 22-53/23-53 53, 23-54 53, 
22-55/23-55 55, 23-97 16, 23-99 11, 24-1/25-1 128, 24-2/25-2 100, 24-4/25-4 56, 25-7 99, 
25-8 8, 25-11 11, 25-17 42, 24-19/25-19 19, 25-20 30, 24-24/25-24 24, 24-29/25-29 29, 
24-35/25-35 128, 24-37/25-37 37, 24-43/25-43 43, 25-46 46, 25-90 46, 24-61/25-61 61, 
25-F4 66, 9-9 9, 11-19 19, 13-32 32, 15-55 55, 17-73 73, 19-88 88, 21-121 121, 23-151 151, 
25-187 187, 7-D2 2, 7-D3 3, 7-D4 4, 
`

func TestInsertTotals(t *testing.T) {
	c := mustDefault(t)
	rows := 0
	for _, row := range strings.Split(printedTotals, ",") {
		f := strings.Fields(row)
		if len(f) != 2 {
			continue
		}
		rows++
		for _, name := range strings.Split(f[0], "/") {
			i, ok := c.Insert(name)
			if !ok {
				t.Errorf("no insert %s", name)
				continue
			}
			sum := 0
			for _, g := range i.Contacts {
				sum += g.Count
			}
			if fmt.Sprint(sum) != f[1] || i.Count() != sum {
				t.Errorf("%s: %d contacts, %d cavities, printed %s", name, sum, i.Count(), f[1])
			}
			if got := strings.Join(i.Names(), "/"); got != f[0] {
				t.Errorf("%s: names %s, want %s", name, got, f[0])
			}
			if i.Standing != Published {
				t.Errorf("%s: counts stand %q", name, i.Standing)
			}
		}
	}
	if got := len(c.InsertIDs()); got != rows {
		t.Errorf("%d inserts, the chart has %d", got, rows)
	}
}

func TestInsertContacts(t *testing.T) {
	c := mustDefault(t)
	// source: insert availability chart of a maker's MIL-DTL-38999 series I/II/III catalogue
	for _, tt := range []struct {
		name, contacts, rating string
		shell                  int
	}{
		{"19-32", "32×20", "I", 18},
		{"18-32", "32×20", "I", 18},
		{"8-35", "6×22D", "M", 8},
		{"25-35", "128×22D", "M", 24},
		{"16-99", "21×20 2×16", "I", 16},
		{"25-20", "10×20 13×16 4×12 coax 3×8 twinax", "N", 24}, // twinax: the source of the names
		{"17-2", "38×22D 1×8 twinax", "M", 16},
		{"25-8", "8×8 twinax", "", 24}, // the chart gives it no rating
		{"23-99", "11×16", "II", 22},
		{"25-187", "187×23", "N", 24},
		{"7-D4", "4×22D", "M", 0}, // a tiny shell has no series II size
	} {
		i, _ := c.Insert(tt.name)
		var got []string
		for _, g := range i.Contacts {
			got = append(got, fmt.Sprintf("%d×%s", g.Count, g.Size))
		}
		if g := strings.Join(got, " "); g != tt.contacts || i.Rating != tt.rating || i.Shell != tt.shell {
			t.Errorf("%s: %s, rating %q, shell %d; want %s, %q, %d", tt.name, g, i.Rating, i.Shell, tt.contacts, tt.rating, tt.shell)
		}
	}
}

func TestUnqualifiedInsertsSaySo(t *testing.T) {
	c := mustDefault(t)
	for name, want := range map[string]bool{"8-2": true, "16-13": true, "14-19": true, "18-32": false, "18-35": false} {
		i, _ := c.Insert(name)
		if got := strings.Contains(i.Source, "not military-qualified"); got != want {
			t.Errorf("%s: source says not qualified: %v, want %v (source: the chart's mark)", name, got, want)
		}
	}
}
