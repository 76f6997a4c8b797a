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
		if slices.Contains(of.marks, pin) && slices.ContainsFunc(of.devices, func(w string) bool { return isWord(last, w) }) &&
			(of.kinds == nil || slices.ContainsFunc(device, func(s string) bool {
				return slices.ContainsFunc(of.kinds, func(k string) bool { return strings.HasPrefix(s, k) })
			})) {
			return true
		}
	}
	return false
}

// isWord reports whether a word is another one, or ends in it where that is long enough to be no part of a third: "block" is no lock.
func isWord(w, of string) bool {
	const least = 6 // letters (no source)
	return w == of || len(of) >= least && strings.HasSuffix(w, of)
}

// terminals are the marks by the last word of the device, folded; kinds are the first letters of a word that the device has besides, for a
// machine has its fifteenth limit switch.
var terminals = []struct{ devices, kinds, marks []string }{
	{[]string{"switch", "schalter", "schloss", "lock", "stalk", "contacteur", "interruptor", "interruttore"},
		[]string{"ign", "key", "light", "head", "wip", "zund", "licht", "wisch", "blink", "contact", "encendido", "accensione", "luci"},
		[]string{"15", "15a", "30", "30a", "31", "31b", "49", "49a", "50", "53", "53a", "53b", "54", "56", "56a", "56b", "58", "71"}},
	{[]string{"alternator", "generator", "lichtmaschine", "dynamo", "regulator", "regler", "alternateur", "alternador", "alternatore"}, nil,
		[]string{"b+", "d+", "d-", "df", "b-", "61"}},
	{[]string{"starter", "anlasser", "solenoid", "demarreur", "magnetschalter"}, nil, []string{"30", "50", "50b"}},
	{[]string{"flasher", "blinkgeber"}, nil, []string{"31", "49", "49a"}},
	{[]string{"wiper", "wipers", "wischer", "wischermotor"}, nil, []string{"31", "31b", "53", "53a", "53b", "53e"}},
	{[]string{"headlight", "headlamp", "scheinwerfer"}, nil, []string{"31", "56a", "56b", "58"}},
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
