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

// Numbers are the numbers before lines that AreNumbered has told apart from cavities, and the ends that these lines name; the zero value
// has seen none.
type Numbers struct {
	last int
	ends map[string]bool
}

// Count reports whether some lines are numbered as AreNumbered tells, or count on where such lines before them in the sheet ended, one by
// one, with both ends in each. Those that count from one again are wires too where most begin at an end of the lines before.
//
//  12. Fuse box F6 -> Heater
//
//     NEGATIVES
//
//  13. Battery - -> Shunt
//
//  14. Heater -> Shunt
func (n *Numbers) Count(lines []string) bool {
	if n.last == 0 && !AreNumbered(lines) {
		return false // most texts
	}
	last, first := 0, 0
	var ends []string
	for i, line := range lines {
		number, rest, _ := strings.Cut(line, " ")
		at, err := strconv.Atoi(strings.TrimRight(number, ".):"))
		from, to, _ := Part(strings.TrimSpace(rest))
		if err != nil || from == "" || to == "" || i > 0 && at != last+1 {
			return AreNumbered(lines)
		}
		if i == 0 {
			first = at
		}
		last = at
		ends = append(ends, table.Fold(from), table.Fold(to))
	}
	met := 0
	for i := 0; i < len(ends); i += 2 {
		if n.ends[ends[i]] {
			met++
		}
	}
	if !(n.last > 0 && first == n.last+1) && !(first == 1 && 2*met > len(lines)) && !AreNumbered(lines) {
		return false
	}
	if n.ends == nil {
		n.ends = map[string]bool{}
	}
	for _, e := range ends {
		n.ends[e] = true
	}
	n.last = last
	return true
}

// isMark reports whether a word is a few capitals, as what a device has on its terminals is written: "OUT", "NEG". The name of a wire can
// end so, too, "sensor GND".
func isMark(word string) bool {
	return len(word) < 5 && word == strings.ToUpper(word) && strings.Trim(word, "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789+-") == ""
}
