package wirelist_test

import (
	"fmt"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// The cavities of a control unit, or of another plug, stand in a column that it heads, however a plug of it and its cavity are parted.
func TestWaysToHeadFarCavities(t *testing.T) {
	for _, head := range []string{"ECU", "To ECU", "ECU pin", "X9", "To X9"} {
		of := "ECU"
		if head == "X9" || head == "To X9" {
			of = "X9"
		}
		for _, way := range []string{"%d", "A%d", "A-%d", "A.%d", "A %d", "b%d"} {
			list := fmt.Sprintf("## J4 (cam sensor)\n\n| Way | Signal | Colour | %s |\n|---|---|---|---|\n", head)
			names, colours := []string{"supply", "signal", "return"}, []string{"red", "white", "black"}
			for k, n := range []int{3, 12, 30} {
				list += fmt.Sprintf("| %d | %s | %s | "+way+" |\n", k+1, names[k], colours[k], n)
			}
			tables, err := table.Read("l.md", []byte(list), table.Limits{})
			if err != nil {
				t.Fatal(err)
			}
			h, _, err := wirelist.Import(tables, draft.Options{})
			if err != nil || len(h.Wires) != 3 {
				t.Errorf("%s, %s: %d wires, %v", head, way, len(h.Wires), err)
				continue
			}
			for k, n := range []int{3, 12, 30} {
				w := h.Wires[k]
				if want := fmt.Sprintf("%s:"+way, of, n); w.From.V != fmt.Sprintf("J4:%d", k+1) || w.To.V != want {
					t.Errorf("%s, %s: %s to %s, want %s", head, way, w.From.V, w.To.V, want)
				}
			}
		}
	}
}
