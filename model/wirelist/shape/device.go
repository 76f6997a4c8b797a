package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/table"
)

// DeviceOf is the device that the heading of its cavities names: "ECU" of "ECU", "ECU pin" and "Pin at ECU".
func DeviceOf(head string) string {
	all := strings.Fields(head)
	if bare := name.WithoutBrackets(head); strings.HasSuffix(head, ")") && len(strings.Fields(bare)) == len(all) {
		all = strings.Fields(bare) // "Dash (pin)"
	}
	isPin := func(w string) bool { return pinword.Is(table.Fold(w)) }
	switch {
	case len(all) > 1 && isPin(all[len(all)-1]):
		return strings.Join(all[:len(all)-1], " ")
	case len(all) > 1 && isPin(all[0]):
		all = all[1:]
		if len(all) > 1 && slices.Contains([]string{"at", "on", "of", "in"}, table.Fold(all[0])) {
			all = all[1:]
		}
		return strings.Join(all, " ")
	}
	if cut := strings.LastIndexAny(head, "-_"); cut > 0 && isPin(head[cut+1:]) {
		return head[:cut] // "ECU-Pin"
	}
	return head
}

// Devices are the columns that hold the cavities of the device that their heading names.
func (b *Block) Devices() (cols []int) {
	for i, c := range b.Cols {
		if c.Field == name.FieldDevicePin {
			cols = append(cols, i)
		}
	}
	return cols
}
