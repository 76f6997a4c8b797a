package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/table"
)

// What each table of a list can be read as, the best way first; a table without wires says so.
func TestExplain(t *testing.T) {
	tables, err := table.Read("a.md", listtest.Read(t, "kinds/02-bulkhead-contact.md"), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	lines := wirelist.Explain(tables, nil)
	if len(lines) < 4 || !strings.HasPrefix(lines[0], "a.md, row 3: Cave rover, hatch plate: Pin | Circuit") ||
		!strings.HasPrefix(lines[1], "  taken for cavities of a bulkhead between two ends, ") || !strings.Contains(lines[1],
		"Pin is through") ||
		!strings.HasPrefix(lines[2], "  else for both ends in a row, ") {
		t.Errorf("%s", strings.Join(lines, "\n"))
	}
	tables, _ = table.Read("b.csv", []byte("Item,Qty,Price\nPlug,2,4.10\nPin,30,0.12\n"), table.Limits{})
	if all := strings.Join(wirelist.Explain(tables, nil), "\n"); !strings.Contains(all, "left out, taken for a list of parts") {
		t.Error(all)
	}
}
