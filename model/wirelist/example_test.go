package wirelist_test

import (
	"fmt"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// A pin table without far ends, with a pair, a spare and a cavity of each kind.
func ExampleImport() {
	list := `| Pin | Description | Colour | Size | Note |
|-----|-------------|--------|------|------|
| A | Wheel speed + | white | 24 | 2x24 shielded |
| B | Wheel speed - | white/blue | 24 | 2x24 shielded |
| C | spare | yellow | 22 | |
| D | N/C | | | |
| E | Not used | | | reserved |
`
	tables, err := table.Read("wheel.md", []byte(list), table.DefaultLimits())
	if err != nil {
		fmt.Println(err)
		return
	}
	h, report, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range report.Lines() {
		fmt.Println(line)
	}
	fmt.Println(h.Wires[0].From.V, h.Wires[0].Colour.V, h.Terminations[0].Reserved)
	// Output:
	// wheel.md: 1 table, 5 rows: 1 termination, 3 wires, 1 unit, 0 splices
	// wheel: 2 cavities wired, 1 wired spare (C), 1 reserved (E), 1 blank (D)
	// C1 Wheel speed shielded pair of wires 1 and 2
	// wires without specification: AS22759/32 for 3 taken; no branch: the list names one termination
	// warn: no far end in the lists: 3 wires: wheel:A, wheel:B, wheel:C (spare); kept with one end
	// wheel:A 9 [E]
}
