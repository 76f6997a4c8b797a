package endpins

import (
	"slices"
	"strings"
)

// hasTerminal reports whether a word behind a device is the mark of a terminal as devices of vehicles of its kind have it, "relay 87",
// "light switch 56a", "generator D+": it is no number of a device. DIN 72552, from memory, not verified.
func hasTerminal(device []string, pin string) bool {
	pin = strings.ToLower(pin)
	if isContact(pin) && isRelayWord(device) {
		return true
	}
	last := device[len(device)-1]
	for _, of := range terminals {
		if slices.ContainsFunc(of.devices, func(w string) bool { return strings.HasSuffix(last, w) }) && slices.Contains(of.marks, pin) {
			return true
		}
	}
	return false
}

// terminals are the marks by the last word of the device, folded.
var terminals = []struct{ devices, marks []string }{
	{[]string{"switch", "schalter", "lock", "schloss", "stalk", "hebel", "contacteur", "interruptor", "interruttore"},
		[]string{"15", "15a", "30", "30a", "31", "31b", "49", "49a", "50", "53", "53a", "53b", "54", "56", "56a", "56b", "58", "71"}},
	{[]string{"alternator", "generator", "lichtmaschine", "dynamo", "regulator", "regler", "alternateur", "alternador", "alternatore"},
		[]string{"b+", "d+", "d-", "df", "b-", "61"}},
	{[]string{"starter", "anlasser", "solenoid", "demarreur", "magnetschalter"}, []string{"30", "50", "50b"}},
	{[]string{"flasher", "blinkgeber", "indicator unit"}, []string{"31", "49", "49a"}},
	{[]string{"wiper", "wipers", "wiper motor", "wischer", "wischermotor"}, []string{"31", "31b", "53", "53a", "53b", "53e"}},
	{[]string{"headlight", "headlamp", "scheinwerfer"}, []string{"31", "56a", "56b", "58"}},
}

// isContact reports whether a number is one that the terminals of relays have.
func isContact(pin string) bool {
	switch strings.ToLower(pin) {
	case "30", "85", "86", "87", "87a", "87b":
		return true
	}
	return false
}

// isRelayWord reports whether one of some words is of a relay.
func isRelayWord(words []string) bool {
	return slices.ContainsFunc(words, func(w string) bool {
		for _, r := range []string{"relay", "relais", "rele", "relee", "przekaznik", "rela"} {
			if strings.HasSuffix(w, r) {
				return true
			}
		}
		return false
	})
}
