package run

// works are the kinds of step as a person names the work.
var works = map[StepKind]string{CutStep: "cut", MakeStep: "make up", LayStep: "lay", BuildUpStep: "lay", JoinStep: "splice",
	ThreadStep: "thread", HoldStep: "holds", PinStep: "contacts", WindStep: "wind", ShrinkStep: "shrink", GlueStep: "adhesive",
	WeighStep: "weigh", LotStep: "lots", PullStep: "samples"}

// Work is what the steps of a kind are called.
func (k StepKind) Work() string { return works[k] }
