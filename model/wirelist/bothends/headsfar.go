package bothends

import (
	"slices"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// HeadsFar reports whether the heading of a column is the second of the two devices that the nearest heading above the table names, or
// words of its name: "Amp" below "Load cells -> amp board".
func HeadsFar(head string, path, titles []table.Row) bool {
	_, far := devicesAbove(path, titles)
	of := name.Words(table.Fold(far))
	words := name.Words(table.Fold(head))
	return far != "" && len(words) > 0 && !slices.ContainsFunc(words, func(w string) bool { return !slices.Contains(of, w) })
}

// NearOfColours is the first of these two devices, where the columns are the colours of its wires and the pads of the second; else the plug
// of the colours.
func NearOfColours(cols []shape.Column, path, titles []table.Row, plug string) string {
	if !slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldToPin && c.Headed }) {
		return plug
	}
	near, _ := devicesAbove(path, titles)
	return near
}

// devicesAbove are the two devices that the nearest heading names.
func devicesAbove(path, titles []table.Row) (near, far string) {
	for _, r := range slices.Backward(slices.Concat(path, titles)) {
		if n, text := r.Filled(); n == 1 && r.Level > 0 {
			return arrow.HeadingDevices(text)
		}
	}
	return "", ""
}
