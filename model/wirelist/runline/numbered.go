package runline

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// AreNumbered reports whether some lines tell both ends of a wire each behind a number that counts the lines: what stands before the far
// end is a device and its cavity in most of them, and some device comes again. Behind the cavity of a plug stands a name.
//
//  1. Relay 87 to fan +, red 12 AWG
//  2. Relay 85 to desk A7, white 20 AWG
func AreNumbered(lines []string) bool {
	var ends [][2]string
	far := map[string]bool{} // the far ends and their devices
	for _, line := range lines {
		number, rest, ok := strings.Cut(line, " ")
		if bare := strings.TrimRight(number, ".):"); !ok || bare == number || strings.Trim(bare, "0123456789") != "" {
			return false
		}
		from, to, _ := Part(strings.TrimSpace(rest))
		if from == "" || to == "" {
			return false
		}
		ends = append(ends, [2]string{from, to})
		far[table.Fold(to)], far[table.Fold(to[:max(strings.LastIndexByte(to, ' '), 0)])] = true, true
	}
	devices, n, again := map[string]int{}, 0, false
	for _, e := range ends {
		at := strings.LastIndexByte(e[0], ' ')
		device, last := table.Fold(e[0][:max(at, 0)]), e[0][at+1:]
		if IsPlainEnd(e[0]) || at > 0 && (last == "+" || last == "-" || name.IsCavity(last) || far[device] && isMark(last)) ||
			at > 0 && far[table.Fold(e[0])] {
			n++
			devices[device]++
			again = again || devices[device] > 1
		}
	}
	return 3*n >= 2*len(lines) && again && len(lines) > 1
}

// Numbers are the numbers before lines that AreNumbered has told apart from cavities; the zero value has seen none.
type Numbers struct{ last int }

// Count reports whether some lines are numbered as AreNumbered tells, or go on counting where such lines before them in the sheet
// ended, one by one, with both ends in each: below a text between, the numbers count the same wires.
//
//  12. Fuse box F6 -> Heater
//
//     NEGATIVES
//
//  13. Battery - -> Shunt
//
//  14. Heater -> Shunt
func (n *Numbers) Count(lines []string) bool {
	if !AreNumbered(lines) && !n.goOn(lines) {
		return false
	}
	number, _, _ := strings.Cut(lines[len(lines)-1], " ")
	n.last, _ = strconv.Atoi(strings.TrimRight(number, ".):"))
	return true
}

// goOn reports whether lines count on from the last number.
func (n *Numbers) goOn(lines []string) bool {
	for i, line := range lines {
		number, rest, _ := strings.Cut(line, " ")
		at, err := strconv.Atoi(strings.TrimRight(number, ".):"))
		if err != nil || n.last == 0 || at != n.last+1+i {
			return false
		}
		if from, to, _ := Part(strings.TrimSpace(rest)); from == "" || to == "" {
			return false
		}
	}
	return len(lines) > 0
}

// isMark reports whether a word is a few capitals, as what a device has on its terminals is written: "OUT", "NEG". The name of a wire can
// end so, too, "sensor GND".
func isMark(word string) bool {
	return len(word) < 5 && word == strings.ToUpper(word) && strings.Trim(word, "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789+-") == ""
}
