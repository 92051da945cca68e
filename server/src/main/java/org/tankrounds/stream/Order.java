package org.tankrounds.stream;

/** The order, or the larger group, that a family of small stream animals belongs to. */
public enum Order {
    /** Stoneflies. */
    PLECOPTERA(true, true),
    /** Mayflies. */
    EPHEMEROPTERA(true, true),
    /** Caddisflies. */
    TRICHOPTERA(true, true),
    /** Dragonflies and damselflies. */
    ODONATA(false, true),
    /** Alderflies, fishflies, dobsonflies. */
    MEGALOPTERA(false, true),
    /** Beetles. */
    COLEOPTERA(false, true),
    /** True flies. */
    DIPTERA(false, true),
    CRUSTACEA(false, true),
    /** Worms and leeches. */
    ANNELIDA(false, false),
    /** Snails and clams. */
    MOLLUSCA(false, false),
    /** Flatworms. */
    TURBELLARIA(false, false);

    private final boolean ept;
    private final boolean arthropod;

    Order(boolean ept, boolean arthropod) {
        this.ept = ept;
        this.arthropod = arthropod;
    }

    /** Whether its families count in the EPT richness. */
    public boolean isEpt() {
        return ept;
    }

    /** Whether Hilsenhoff counted it in 1988. */
    public boolean isArthropod() {
        return arthropod;
    }
}
