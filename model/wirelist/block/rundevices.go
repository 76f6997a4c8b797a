package block

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// A list of both ends often names the two devices once, above it, and in each line their pads alone.
//
//	(gauge)  (hub)        Gauge -> Hub        ## Gauge to hub
//	VCC ---> 5V           VCC -> 5V           - VCC → 5V
//	OUT ---> A3           OUT -> A3           - OUT → A3

// runDevices are the devices of both sides of a list of runs, where most of its ends are pads alone and the line above names
// two; "" where it does not.
func (f *finder) runDevices(titles, points []table.Row) (near, far string) {
	pads := 0
	for _, r := range points {
		from, to, _ := partRun(r.Cells[0])
		if isPad(from) && isPad(to) {
			pads++
		}
	}
	if len(titles) == 0 || 4*pads < 3*len(points) {
		return "", ""
	}
	above := titles[len(titles)-1]
	_, text := above.Filled()
	if len(above.Cells) != 1 || above.Level == 0 && above.Line+3 < points[0].Line {
		return "", ""
	}
	if near, far, ok := inBracketsBoth(text); ok {
		return near, far
	}
	if above.Gap != nil {
		return bareDevice(above.Gap[0]), bareDevice(above.Gap[1])
	}
	return twoDevices(text)
}

// ownHead reports whether the first of some runs names the devices of the others: it has words, the others have pads in
// capitals and figures.
func ownHead(points []table.Row) (near, far string, ok bool) {
	if len(points) < 3 {
		return "", "", false
	}
	near, far, rest := partRun(points[0].Cells[0])
	if !isWord(near) || !isWord(far) || strings.Join(rest, "") != "" {
		return "", "", false
	}
	for _, r := range points[1:] {
		from, to, _ := partRun(r.Cells[0])
		if !isPad(from) || !isPad(to) || isWord(from) || isWord(to) {
			return "", "", false
		}
	}
	return near, far, true
}

// isPad reports whether an end is one short word, as the pads of boards are called.
func isPad(end string) bool {
	end, _ = remarkBehindPad(end, true)
	return end != "" && len(end) <= 12 && !strings.ContainsAny(end, " :")
}

// isWord reports whether an end is words of small letters, as devices are called, and no pad: "Hub", "Rain gauge".
func isWord(end string) bool {
	first, _, _ := strings.Cut(end, " ")
	if len(first) < 3 || strings.ContainsAny(end, ":") {
		return false
	}
	small := 0
	for _, c := range first[1:] {
		if c >= 'a' && c <= 'z' {
			small++
		}
	}
	return small >= 2 && name.StateOf(end) == name.Used
}

// inBracketsBoth reads two names in brackets of their own and nothing else, "(gauge) (hub)".
func inBracketsBoth(text string) (near, far string, ok bool) {
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

// twoDevices reads a title of two devices with an arrow or "to" between, "Gauge to hub", "Wiring: gauge → hub".
func twoDevices(text string) (near, far string) {
	text = strings.TrimRight(strings.TrimSpace(text), ":")
	if open := strings.LastIndexByte(text, '('); open > 0 && strings.HasSuffix(text, ")") {
		if _, to := arrowIn(text[open:]); to > 0 {
			text = text[open+1 : len(text)-1]
		}
	}
	near, far, ok := cutAtArrow(text)
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
	near, far = bareDevice(near), bareDevice(far)
	if !ok || near == "" || far == "" || len(strings.Fields(near)) > 3 || len(strings.Fields(far)) > 3 ||
		strings.ContainsAny(near+far, ",;.()") || name.IsGeneric(near) || name.IsGeneric(far) {
		return "", ""
	}
	return near, far
}

// bareDevice takes the words that a title has round the name of a device off it.
func bareDevice(text string) string {
	all := strings.Fields(strings.Trim(text, " ()[]:-"))
	for len(all) > 0 {
		switch table.Fold(all[0]) {
		case "the", "a", "from", "connect", "connecting", "connection", "connections", "wiring", "wire", "der", "die", "das", "le", "la",
			"el", "von", "de":
			all = all[1:]
			continue
		}
		break
	}
	for len(all) > 1 {
		switch table.Fold(all[len(all)-1]) {
		case "pin", "pins", "pad", "pads", "side", "connections", "wiring", "connector":
			all = all[:len(all)-1]
			continue
		}
		break
	}
	return strings.Join(all, " ")
}

// remarkBehindPad parts what stands in brackets off an end, "D8 (SCK)", "HUB D8 (SCK)"; what is a cavity or a pole stays, as
// in "Plug (3)", but for that of a pad alone.
func remarkBehindPad(end string, pad bool) (bare, remark string) {
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
