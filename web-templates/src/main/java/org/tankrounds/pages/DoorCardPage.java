package org.tankrounds.pages;

/**
 * A class card as it hangs at the tank, shown once.
 *
 * @param cardTo address of the page about it
 * @param qr its own address, with the code in it
 * @param code as it is printed, in groups
 * @param address where the code is typed
 * @param thisMachineOnly whether no other machine can follow that address
 */
public record DoorCardPage(
        String title, String school, String room, String cardTo, QrSquare qr, String code, String address,
        boolean thisMachineOnly) implements Page {}
