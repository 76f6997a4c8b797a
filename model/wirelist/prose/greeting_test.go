package prose

import "testing"

// A letter greets, and a harness has names that begin as a greeting does.
func TestIsGreeting(t *testing.T) {
	for _, s := range []string{"Hello both,", "Hello both", "Hi Jo,", "Dear Ben,", "Guten Tag zusammen,", "Sehr geehrte Damen und", "Hi",
		"Bonjour à tous,", "Liebe Anke", "Kind regards,", "Cheers", "Viele Grüße", "Good morning Ruth"} {
		if !IsGreeting(s) {
			t.Errorf("%q is no greeting", s)
		}
	}
	for _, s := range []string{"Hi beam", "HI BEAM relay", "Good ground", "Best battery", "Hello lamp of the door, left side",
		"Kind of plug",
		"Dash plug", "J1", "Dear", "Best connector X4"} {
		if IsGreeting(s) {
			t.Errorf("%q is a greeting", s)
		}
	}
}
