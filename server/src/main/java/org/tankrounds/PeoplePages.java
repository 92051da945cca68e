package org.tankrounds;

import java.time.Clock;
import java.util.Optional;
import org.tankrounds.config.Config;
import org.tankrounds.db.Transactions;
import org.tankrounds.people.AccountHandlers;
import org.tankrounds.people.Bearers;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.Cookies;
import org.tankrounds.people.Doorman;
import org.tankrounds.people.FormGuard;
import org.tankrounds.people.InvitationHandlers;
import org.tankrounds.people.Invitations;
import org.tankrounds.people.PasswordHashes;
import org.tankrounds.people.PersonActs;
import org.tankrounds.people.PersonHandlers;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.people.Sessions;
import org.tankrounds.people.SetUp;
import org.tankrounds.people.SetUpHandlers;
import org.tankrounds.people.SignIn;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.people.SiteAddress;
import org.tankrounds.people.TokenHandlers;
import org.tankrounds.people.TokenRepository;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Pages;

/** The door, and the pages of signing in, people and tokens. */
record PeoplePages(
        Doorman doorman, SetUp setUp, SignInHandlers signIn, SetUpHandlers firstChapter, InvitationHandlers invitations,
        AccountHandlers account, PersonHandlers people, TokenHandlers tokens) {

    static PeoplePages of(
            Config config, Clock clock, Transactions transactions, TankRepository tanks, KitRepository kits, Pages pages) {
        ChapterRepository chapters = new ChapterRepository();
        PersonRepository people = new PersonRepository();
        PasswordHashes passwords = new PasswordHashes();
        Sessions sessions = new Sessions(transactions, clock);
        Cookies cookies = new Cookies(config.secure());
        SignIn signIn = new SignIn(transactions, people, passwords, sessions, clock);
        SetUp setUp = new SetUp(transactions, chapters, people, kits, passwords, sessions, clock);
        Invitations invitations = new Invitations(transactions, chapters, people, passwords, sessions, clock);
        PersonActs acts = new PersonActs(people, sessions, invitations, clock);
        return new PeoplePages(
                new Doorman(sessions, new Bearers(transactions, clock), cookies, new FormGuard(config.baseUrl())),
                setUp,
                new SignInHandlers(signIn, sessions, cookies, pages),
                new SetUpHandlers(setUp, cookies, pages),
                new InvitationHandlers(invitations, cookies, pages),
                new AccountHandlers(transactions, people, passwords, signIn, sessions, cookies, pages),
                new PersonHandlers(transactions, people, acts, tanks, new SiteAddress(config.baseUrl()), pages),
                new TokenHandlers(transactions, new TokenRepository(), tanks, pages, clock));
    }

    /** @return where the first chapter is set up; empty once there is one */
    Optional<String> setUpPath() {
        return setUp.newLink();
    }
}
