package arrow

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/table"
)

// Ends are the two ends of a wire as a line of text has them.
type Ends struct{ From, To string }

// PadSides reports on which sides of some wires stand the pads of one device that no line names, so that the heading above
// them must: each end there is one short word, one of them is what boards call a pad, and none is a device of the other side.
//
//	## Gauge
//	VCC -> Hub pin 1
//	OUT -> Hub pin 12
//
// Where one side is such pads, short words in capitals and numbers on the other side are pads, too: "1 -> IO14".
func PadSides(all []Ends) (near, far bool) {
	from, to := make([]string, len(all)), make([]string, len(all))
	for i, e := range all {
		from[i], to[i] = e.From, e.To
	}
	near, far = arePads(from, to), arePads(to, from)
	return near || far && noWords(from), far || near && noWords(to)
}

// noWords reports whether some ends are short and none is a word in small letters, as devices are called.
func noWords(ends []string) bool {
	return !slices.ContainsFunc(ends, func(e string) bool {
		bare, _ := RemarkBehind(e, true)
		return !IsPadText(bare) || strings.ContainsFunc(bare, unicode.IsLower) && !IsPad(bare) && !name.IsPinCell(bare)
	})
}

// arePads reports whether some ends are pads and nothing but pads; others are the ends on the other side.
func arePads(ends, others []string) bool {
	known, sure, seen := 0, false, map[string]bool{}
	for _, e := range ends {
		bare, _ := RemarkBehind(e, true)
		if !IsPadText(bare) {
			return false
		}
		if IsPad(bare) {
			known++
			sure = sure || isSurePad(bare)
		}
		seen[table.Fold(bare)] = true
	}
	if known == 0 || 2*len(seen) <= len(ends) && len(ends) > 2 {
		return false
	}
	places, likely := 0, 0
	for _, o := range others {
		if isPlace(o) {
			places++
		}
		if isPlace(o) || IsPad(o) || strings.ContainsFunc(o, unicode.IsLower) {
			likely++
		}
		first, more, _ := strings.Cut(table.Fold(o), " ")
		if more != "" && seen[first] && !IsPad(first) {
			return false
		}
	}
	return sure && 2*likely >= len(others) || 2*places >= len(others) // "RESET -> IDLE" is a state, "SDA -> BUS_DATA" a name
}

// isSurePad reports whether a word is a pad and hardly anything else: a supply, a bus.
func isSurePad(text string) bool {
	f := table.Fold(text)
	return pads.IsSupply(text) || pads.IsBus(text) && f != "reset" && f != "rst"
}

// isPlace reports whether an end is a device and its cavity, or a pad with a number.
func isPlace(end string) bool {
	bare, _ := RemarkBehind(end, true)
	last := bare[strings.LastIndexByte(bare, ' ')+1:]
	if connector, pin, ok := name.SplitEnd(bare); ok && name.IsDesignator(connector) && name.IsCavity(pin) {
		return true
	}
	return last != "" && (name.IsCavity(last) || isSurePad(last)) && (last != bare || strings.ContainsAny(last, "0123456789"))
}

// IsPadText reports whether an end can be a pad: one short word and no connector with its cavity, or a word for a cavity and its
// name.
func IsPadText(end string) bool {
	if name.IsPinCell(end) {
		return true
	}
	connector, pin, ok := name.SplitEnd(end)
	return end != "" && len(end) <= 12 && !strings.ContainsAny(end, " :") && !(ok && name.IsDesignator(connector) && name.IsCavity(pin))
}

// IsPad reports whether a word is what the makers of boards and modules print beside a pad: a supply, a bus, a line of control.
// Common practice, no source.
func IsPad(text string) bool {
	if text == "+" || text == "-" || pads.IsSupply(text) || pads.IsBus(text) {
		return true
	}
	w := strings.Trim(table.Fold(text), "+-_/")
	if bare := strings.TrimRight(w, "0123456789"); bare != w && slices.Contains([]string{"gnd", "in", "out", "nc", "no", "com", "sig"},
		bare) {
		return true
	}
	if volts := strings.TrimSuffix(w, "v"); volts != w && volts != "" && strings.Trim(volts, "0123456789.") == "" {
		return true
	}
	return slices.Contains([]string{"vee", "vout", "vm", "vmot", "vref", "pgnd", "1v8", "5v0", "tx0", "rx0", "tx1", "rx1", "rts", "cts",
		"dtr",
		"ce", "cipo", "copi", "en", "ena", "int", "di", "do", "dq", "data", "dat", "sig", "signal", "out", "in", "pwm", "step", "dir",
		"stby",
		"bclk", "lrck", "lrc", "ws", "canh", "canl", "can_h", "can_l", "can-h", "can-l", "busy", "aout", "ao", "a0"}, w)
}

// HeadedDevice is the device that a heading names, its number, its words for wires and the second of two devices left out:
// "2. Gauge wiring", "Connecting the gauge", "Gauge to hub"; "" where it names none.
func HeadedDevice(text string) string {
	text = strings.TrimRight(strings.TrimSpace(text), " :.")
	if num, rest, ok := strings.Cut(text, " "); ok && strings.Trim(num, "0123456789.)") == "" {
		text = strings.TrimSpace(rest)
	}
	device, _ := TwoDevices(text)
	if open := strings.LastIndex(text, " ("); device == "" && open > 0 && strings.HasSuffix(text, ")") {
		if bare := BareDevice(text[:open]); bare != "" && !name.IsGeneric(bare) && !isTopic(bare) {
			device = bare + text[open:] // "Gauge (HX-2)"
		}
	}
	if device == "" {
		device = BareDevice(text)
	}
	if device == "" || name.IsGeneric(device) || isTopic(device) || len(strings.Fields(device)) > mostNamed {
		return ""
	}
	return device
}

// ToDevice is the device that a line says all is taken to, "Connections to the hub", "All to the hub:"; "" where it says none.
func ToDevice(text string) string {
	text = strings.TrimRight(strings.TrimSpace(text), " :.")
	for _, word := range []string{" to ", " with ", " an ", " mit ", " vers ", " a ", " al ", " naar ", " op ", " til ", " till "} {
		front, back, ok := strings.Cut(text, word)
		if !ok || slices.ContainsFunc(name.Words(table.Fold(front)), func(w string) bool {
			return !name.IsGeneric(w) && BareDevice(w) != "" && !slices.Contains([]string{"everything", "alles", "tout", "todo", "goes",
				"go", "is",
				"are", "runs", "wired", "connected", "connects", "soldered", "geht", "gehen", "va", "vont"}, w)
		}) {
			continue
		}
		if device := BareDevice(back); device != "" && len(strings.Fields(device)) < 4 && !name.IsGeneric(device) &&
			!strings.ContainsAny(device, ",;") {
			return device
		}
	}
	return ""
}

// mostNamed is how many words the name of a device has; more are a sentence (no source).
const mostNamed = 6

// isTopic reports whether a heading is of what its wires are for, and no device.
func isTopic(text string) bool {
	return !slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		return !slices.Contains([]string{"power", "ground", "grounds", "gnd", "supply", "signal", "signals", "data", "bus", "i2c", "spi",
			"uart",
			"serial", "can", "notes", "note", "hardware", "setup", "install", "installation", "assembly", "usage", "pinning", "schematic",
			"electronics", "strom", "versorgung", "masse", "daten", "aufbau", "alimentation", "masses", "donnees", "montage", "materiel",
			"alimentacion", "tierra", "datos", "montaje", "alimentazione", "massa", "dati", "voeding", "and", "und", "et", "y", "e",
			"en"}, w)
	})
}
