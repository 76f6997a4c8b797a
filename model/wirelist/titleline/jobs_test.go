package titleline

import "testing"

func TestIsJob(t *testing.T) {
	for text, want := range map[string]bool{
		"Workshop order 2231": true, "Job 14": true, "Job no. 14 B": true, "Quote 7": true, "Quote: Q7": true, "Auftrag Nr. A-2231": true,
		"Auftragsnr.: 24/117": true, "Devis n° 77/3": true, "Bon de commande 12": true, "Commessa 88": true,
		"Orden de trabajo nº 4471": true, "Zlecenie 3/2024": true, "Order #5512": true,
		"Job": false, "Order 2231 lamp plug": false, "Plug 14": false, "X14": false, "Order of pins": false, "Job box P4": false,
		"Ticket printer 2": false, "Auftrag Melkstand": false,
	} {
		if got := IsJob(text); got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}
