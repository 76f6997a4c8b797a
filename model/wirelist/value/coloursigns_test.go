package value

import "testing"

// A coloured sign says what the word beside it says, or stands alone; against the word it is no colour.
func TestColourSigns(t *testing.T) {
	for text, want := range map[string]string{
		"🟥 red": "red", "🟪 purple": "violet", "⬛ black": "black", "⚫️ schwarz": "black", "🟦": "blue", "🟩🟨": "green/yellow",
		"🟩/🟨 green/yellow": "green/yellow", "⬜ grey": "grey", "pink ⬜": "pink", "🟥 blue": "", "🟥 horn": "", "★ red": "",
		"🟦 light blue": "light blue",
	} {
		c, ok := ParseColour(text, "en")
		if got := c.String(); got != want || ok != (want != "") {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}
