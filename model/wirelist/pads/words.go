package pads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// SameDevice reports whether two headings name one device: "RP2040-PiZero header" and "RP2040".
func SameDevice(a, b string) bool {
	x, y := name.Words(table.Fold(a)), name.Words(table.Fold(b))
	return len(x) > 0 && len(y) > 0 && x[0] == y[0]
}

// IsPlacing reports whether a word before that for a cavity says where its number is counted, and names no device.
func IsPlacing(w string) bool {
	return slices.Contains([]string{"physical", "package", "header", "actual", "connector", "expansion"}, w)
}

// IsSoftware reports whether a word is for a program that numbers the cavities of a board in its own way.
func IsSoftware(w string) bool {
	return slices.Contains([]string{"sysfs", "kernel", "linux", "software", "sw", "driver", "library", "lib", "wiringpi", "gpiochip"}, w)
}

// IsNumberWord reports whether a word behind that for a cavity says that it is a number.
func IsNumberWord(w string) bool {
	return slices.Contains([]string{"no", "number", "nr", "num", "#", "nummer", "id"}, w)
}

// IsChipWord reports whether a word is for what a chip calls its cavities.
func IsChipWord(w string) bool {
	return slices.Contains([]string{"gpio", "io", "port", "channel", "bcm"}, w)
}

// IsNameWord reports whether a word is for the name of a pad.
func IsNameWord(w string) bool {
	return slices.Contains([]string{"label", "labels", "signal", "name", "function", "marking", "silkscreen", "beschriftung", "side"}, w)
}

// IsNoDevice reports whether the first word of a heading is of any wire or cavity, and no device.
func IsNoDevice(w string) bool {
	return slices.Contains([]string{"pin", "pins", "wire", "cable", "net", "signal", "circuit", "line", "core", "conductor", "colour",
		"color", "contact", "terminal", "cavity", "connector", "the", "no", "number", "from", "to", "physical", "package", "header",
		"actual", "port",
		"channel"}, w)
}

// IsChipPad reports whether a word is how a chip calls a pad, "GPIO21", "IO4".
func IsChipPad(w string) bool {
	bare := strings.TrimRight(table.Fold(w), "0123456789")
	return bare != table.Fold(w) && slices.Contains([]string{"gpio", "io", "gp", "pin", "adc", "dac"}, strings.TrimRight(bare, "_"))
}
