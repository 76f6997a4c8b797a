package wirelist_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// Several lists make one harness: the pin tables of two files are the ends of the
// same wires, and each finding says which file it is of.
func TestSeveralLists(t *testing.T) {
	var all []table.Table
	for _, f := range []struct{ name, text string }{
		{"P1 bulkhead.csv", "Pin,Signal,AWG,Colour\n1,Oil pressure 5V,22,red\n2,Oil pressure signal,22,thing\n3,Oil pressure " +
			"ground,22,black\n"},
		{"lists/OIL1.csv", "Pin,Signal,AWG,Colour\nA,Oil pressure 5V,22,red\nB,Oil pressure signal,24,yellow\nC,Oil pressure " +
			"ground,22,black\n"},
	} {
		tables, err := table.Read(f.name, []byte(f.text), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, tables...)
	}
	h, report, err := wirelist.Import(all, draft.Options{Name: "Oil loom"})
	if err != nil {
		t.Fatal(err)
	}
	sound(t, h)
	var ends []string
	for _, w := range h.Wires {
		ends = append(ends, w.From.V+" "+w.To.V)
	}
	if d := cmp.Diff([]string{"P1:1 OIL1:A", "P1:2 OIL1:B", "P1:3 OIL1:C"}, ends); d != "" {
		t.Errorf("-want +got:\n%s", d)
	}
	if h.Head.Name.V != "Oil loom" || len(h.Branches) != 1 {
		t.Errorf("%q, %d branches", h.Head.Name.V, len(h.Branches))
	}
	want := []string{
		"2 lists: 2 tables, 6 rows: 2 terminations, 3 wires, 0 units, 0 splices",
		"P1 (P1 bulkhead): 3 cavities wired",
		"OIL1: 3 cavities wired",
		"wires without specification: AS22759/32 for 3 taken; branch T1 from P1 to OIL1, its length not given (1 mm stands for it)",
		`warn: two sizes for one wire: "Oil pressure signal" 22 and 24 (lists/OIL1.csv row 3); the first is kept, the second in the note`,
		`note: colour that no code has: "thing" (P1 bulkhead.csv row 3); kept in the note`,
	}
	if d := cmp.Diff(want, report.Lines()); d != "" {
		t.Errorf("-want +got:\n%s\n%s", d, strings.Join(report.Full(), "\n"))
	}
}
