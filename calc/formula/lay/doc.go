// Package lay is the geometry of a concentric, counter-twisted bundle: how many
// components close round what they lie on, how thick that becomes, and how much
// longer a wire is than the bundle it is twisted into.
//
// Words. A layer is a ring of components of diameters dᵢ laid on a bed. The
// crown c of a bed is its diameter over the high spots, what callipers read; its
// tape diameter b is the length of its convex hull ÷ π, what a pi tape reads. A
// layer stands on an inner radius r ≥ b/2; what is missing to b/2 is proud.
// L is the lay length (axial advance of one turn), λ the lay angle.
//
// The package knows quantities and nothing of a harness. It does not choose
// what goes into which layer; that is calc/formula/plan.
package lay
