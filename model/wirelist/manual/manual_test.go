package manual_test

import (
	"testing"

	"contralay/model/wirelist/manual"
	"contralay/model/wirelist/table"
)

// The title of a section that names a connector becomes a heading; a row that begins with a number does not.
func TestSections(t *testing.T) {
	for _, c := range []struct {
		cells, next []string
		gap         int
		want        string
	}{
		{[]string{"5.1 Connector X1", "(wire side)"}, []string{"Pin", "Use"}, 2, "Connector X1 (wire side)"},
		{[]string{"5.1.2", "Main plug P3", ""}, []string{"Pin", "Use"}, 2, "Main plug P3"},
		{[]string{"5.1 Connector X1"}, []string{"5.2", "Lamp"}, 1, ""}, // a row of a table
		{[]string{"5.1 Lamp"}, []string{"Pin", "Use"}, 2, ""},
		{[]string{"5.1 Connector X1", "red"}, []string{"Pin", "Use"}, 2, ""},
		{[]string{"5 Connector X1"}, []string{"Pin", "Use"}, 2, ""}, // one number alone counts anything
		{[]string{"2.5 mm2 to the plug of the lamp. Mind it."}, []string{"Pin", "Use"}, 2, ""},
	} {
		in := &table.Table{Rows: []table.Row{{Line: 1, Cells: []string{"Handbook"}}, {Line: 3, Cells: c.cells},
			{Line: 3 + c.gap, Cells: c.next}}}
		got := manual.Rows(in)[1]
		if is := got.Level > 0; is != (c.want != "") || is && got.Cells[0] != c.want {
			t.Errorf("%q: %d %q, want %q", c.cells, got.Level, got.Cells, c.want)
		}
	}
}
