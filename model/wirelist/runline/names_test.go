package runline

import (
	"testing"

	"contralay/model/wirelist/table"
)

func TestNamesBehindLeaveTheEndOut(t *testing.T) {
	row := func(far, note string) table.Row {
		return table.Row{Cells: []string{"HUB", "B1", far, "85", "", "", note, ""}}
	}
	rows := []table.Row{row("tarp relay", "tarp relay pin 85: tarp feed"), row("lamp relay", "lamp relay pin 85: lamp feed"),
		row("bell", "output: bell feed")}
	NamesBehind(rows)
	for i, want := range []string{"tarp feed", "lamp feed", "output: bell feed"} {
		if got := rows[i].Cells[signalAt]; got != want {
			t.Errorf("row %d is called %q, want %q", i, got, want)
		}
	}
}
