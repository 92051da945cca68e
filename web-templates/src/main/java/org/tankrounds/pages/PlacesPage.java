package org.tankrounds.pages;

import java.util.List;

/** Every school of the chapter with its rooms and tanks. */
public record PlacesPage(String title, List<SchoolBlock> schools, String kits) implements Page {

    /**
     * @param id of the block, so that a link may lead to it
     * @param addTank empty while there is no room to put one in
     */
    public record SchoolBlock(
            String name, String id, String place, String clock, String edit, String addRoom, String addTank,
            List<RoomRow> rooms) {}

    /**
     * A tank in its room, or a room without one.
     *
     * @param code of the tank; empty where the room has none
     * @param tap what is known of the tap water, mg/L
     * @param retired since when; empty while in use
     */
    public record RoomRow(
            String room, String editRoom, String code, String editTank, String addTank, String water, String filter,
            String tap, String kit, String retired) {

        public static RoomRow withoutTank(String room, String editRoom, String addTank) {
            return new RoomRow(room, editRoom, "", "", addTank, "", "", "", "", "");
        }

        public boolean hasTank() {
            return !code.isEmpty();
        }
    }
}
