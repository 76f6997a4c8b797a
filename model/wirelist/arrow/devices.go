package arrow

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// BothInBrackets reads two names in brackets of their own and nothing else, "(gauge) (hub)".
func BothInBrackets(text string) (near, far string, ok bool) {
	in, opened := strings.CutPrefix(text, "(")
	in, closed := strings.CutSuffix(in, ")")
	near, far, parted := strings.Cut(in, ")")
	far = strings.TrimSpace(far)
	far, again := strings.CutPrefix(far, "(")
	if !opened || !closed || !parted || !again || strings.ContainsAny(near+far, "()") {
		return "", "", false
	}
	near, far = strings.TrimSpace(near), strings.TrimSpace(far)
	return near, far, near != "" && far != ""
}

// TwoDevices reads a title of two devices with an arrow or "to" between, "Gauge to hub", "Wiring: gauge → hub".
func TwoDevices(text string) (near, far string) {
	text = strings.TrimRight(strings.TrimSpace(text), ":")
	if open := strings.LastIndexByte(text, '('); open > 0 && strings.HasSuffix(text, ")") {
		if _, to := In(text[open:]); to > 0 {
			text = text[open+1 : len(text)-1]
		}
	}
	near, far, ok := Cut(text)
	if !ok {
		for _, word := range []string{" to ", " and ", " an ", " nach ", " vers ", " naar ", " til ", " till "} {
			if near, far, ok = strings.Cut(text, word); ok {
				break
			}
		}
	}
	if i := strings.LastIndex(near, ": "); i >= 0 {
		near = near[i+2:]
	}
	near, far = BareDevice(near), BareDevice(far)
	if !ok || near == "" || far == "" || len(strings.Fields(near)) > 3 || len(strings.Fields(far)) > 3 ||
		strings.ContainsAny(near+far, ",;.()") || name.IsGeneric(near) || name.IsGeneric(far) {
		return "", ""
	}
	return near, far
}

// BareDevice takes the words that a title has round the name of a device off it.
func BareDevice(text string) string {
	all := strings.Fields(strings.Trim(text, " ()[]:-"))
	for len(all) > 0 {
		switch table.Fold(all[0]) {
		case "the", "a", "from", "connect", "connecting", "connection", "connections", "wiring", "wire", "der", "die", "das", "le", "la",
			"el", "von", "de", "anschluss", "verdrahtung", "cablage", "branchement", "du", "des", "conexion", "conexiones", "cableado",
			"del",
			"collegamento", "collegamenti", "cablaggio", "aansluiting", "bedrading", "pinout", "pinbelegung", "of", "for":
			all = all[1:]
			continue
		}
		break
	}
	for len(all) > 1 {
		switch table.Fold(all[len(all)-1]) {
		case "pin", "pins", "pad", "pads", "side", "connections", "wiring", "connector", "pinout", "hookup", "anschluss", "verdrahtung",
			"pinbelegung", "aansluiting", "bedrading", "aansluiten", "anschliessen":
			all = all[:len(all)-1]
			continue
		}
		break
	}
	return strings.Join(all, " ")
}

// RemarkBehind parts what stands in brackets off an end, "D8 (SCK)", "HUB D8 (SCK)"; what is a cavity or a pole stays, as
// in "Plug (3)", but for that of a pad alone.
func RemarkBehind(end string, pad bool) (bare, remark string) {
	open := strings.LastIndex(end, " (")
	if open < 1 || !strings.HasSuffix(end, ")") {
		return end, ""
	}
	in := strings.TrimSpace(end[open+2 : len(end)-1])
	front := strings.TrimSpace(end[:open])
	if in == "" || in == "+" || in == "-" || name.IsCavity(in) && !(pad && strings.ContainsAny(front, "0123456789")) {
		return end, ""
	}
	return front, in
}
