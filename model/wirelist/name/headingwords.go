package name

import (
	"slices"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// What the words of a heading say that its column is of, where it is of no field.

// IsDeviceWord reports whether a folded word of a heading is of what a wire is taken to.
func IsDeviceWord(w string) bool {
	switch w {
	case "sensor", "sensors", "device", "devices", "load", "actuator", "component", "consumer", "motor", "lamp", "switch", "injector",
		"solenoid", "magnet", "electromagnet", "electroaimant", "elektromagnet", "elettromagnete", "electroiman", "valve", "module",
		"gerat", "fuhler", "verbraucher", "capteur", "appareil", "sensore", "dispositivo", "aparato", "urzadzenie", "czujnik":
		return true
	}
	return false
}

// PinWordBehind is the last of the words of a heading, and "output" where it is short for that behind a unit that switches loads: "PDM
// out".
func PinWordBehind(w []string) string {
	last := w[len(w)-1]
	if last != "out" || len(w) < 2 {
		return last
	}
	switch of := w[len(w)-2]; of {
	case "box", "board", "module", "controller", "unit", "block", "relay", "fuse", "fusebox", "driver":
		return "output"
	default:
		if IsUnit(of) {
			return "output"
		}
	}
	return last
}

// SaysDevicePin reports whether a heading is of the cavities of devices that the cells themselves name, "Device pin".
func SaysDevicePin(head string) bool {
	w := Words(table.Fold(head))
	return len(w) == 2 && IsDeviceWord(w[0])
}

// IsRemark reports whether a heading is of what somebody says or marks beside a wire, which is no name of it.
func IsRemark(words []string) bool {
	for _, w := range words {
		switch w {
		case "p", "pn", "number", "code", "mpn", "sku", "id", "type", "group", "direction", "dir", "status", "checked", "done", "seal",
			"contact", "crimp", "tool", "part", "ref",
			"mode", "level",
			"voltage", "current", "range", "rating", "maker", "supplier", "date", "by", "side", "layer", "location", "zone",
			"bay", "branch",
			"comment", "kommentar", "class", "category", "io", "alt", "former", "old":
			return true
		}
	}
	return false
}

// IsSpent reports whether a heading says that its sizes are of something else than the wire of the row.
func IsSpent(head string) bool {
	for _, w := range Words(table.Fold(head)) {
		switch w {
		case "former", "old", "previous", "was", "max", "min", "contact", "seal", "largest", "smallest", "alternative", "suggested":
			return true
		}
	}
	return false
}

// IsUnit reports whether a folded word names a control unit or a place of one, as headings have them.
func IsUnit(w string) bool {
	switch w {
	case "ecu", "pdm", "pmu", "pdu", "tcu", "vcu", "bms", "abs", "bcm", "icu", "dash", "dashboard", "logger", "display", "keypad",
		"gateway",
		"mcu", "plc", "sps", "inverter", "charger", "controller", "relay", "pump", "steuergerat", "calculateur", "centralina", "tablero":
		return true
	}
	return false
}

// IsMeasure reports whether a heading is of a number that is no cavity.
func IsMeasure(words []string) bool {
	return slices.ContainsFunc(words, func(w string) bool {
		if value.LengthWord(w) != "" {
			return true
		}
		switch w {
		case "positions", "min", "max", "typ", "nominal", "torque", "weight", "mass", "pressure", "speed", "power", "watt", "watts", "w",
			"nm", "turns", "year", "page", "step", "priority", "score", "address", "baud", "bits", "byte", "value", "raw", "width",
			"height", "depth", "diameter", "od", "id", "layer", "column", "line", "index", "idx":
			return true
		}
		return false
	})
}

// IsDistance reports whether a heading is of distances.
func IsDistance(head string) bool {
	for _, w := range Words(table.Fold(head)) {
		if OtherKind(w) == "distances" {
			return true
		}
	}
	return false
}

// IsPinTitle reports whether a folded word of a title says that the cavities of a connector follow.
func IsPinTitle(w string) bool {
	switch w {
	case "pin", "pins", "pinout", "pinouts", "connector", "plug", "socket", "wiring", "receptacle", "harness", "loom", "stecker", "buchse",
		"pinbelegung", "belegung", "brochage", "connecteur", "prise", "conector", "connettore", "zlacze", "cable", "lead":
		return true
	}
	return false
}
