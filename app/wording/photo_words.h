#pragma once

#include "app/photos/photo_refusal.h"
#include "core/lesson/photo.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences about photos of couplings: taking one in, looking at it, withdrawing it.
class PhotoWords
{
    Q_DECLARE_TR_FUNCTIONS(PhotoWords)

public:
    static QString kind(PhotoOf of);
    // What has to be done around a picture that was set up on purpose; empty for the others.
    static QString caution(PhotoOf of);
    // What is wrong with a picture that was brought, and what to do.
    static QString refusal(PhotoRefusal refusal);

    // Set up
    static QString photos();
    static QString title(const QString& coupling);
    static QString explanation();
    static QString none();
    static QString pictureLabel();
    static QString chooseFile();
    static QString fileFilter();
    static QString dropHere();
    static QString kindLabel();
    static QString chooseKind();
    static QString noKindYet();
    static QString day();
    static QString note();
    static QString noteHint();
    static QString save();
    static QString waiting();
    static QString waitingFirstOfSeveral();
    static QString noPictureYet();
    static QString chooseWhoStates();
    static QString notOneFile();
    static QString withdraw();
    static QString withdrawTitle(const QString& kind, const QString& coupling);
    static QString withdrawQuestion();
    static QString isWithdrawn();
    static QString kept(const QString& kind, const QString& time);

    // Looking at one
    // What it shows, when and by whom it was taken, and what is said of it.
    static QString captionOf(const Photo& photo, const std::string& person);
    static QString of(const QString& coupling, const QString& caption);
    static QString enlarge(const QString& caption);
    static QString enlargeHint();
    static QString largeName();
    static QString closeHint();
    static QString cannotBeShown();

    // Beside a look
    static QString keyPhoto();
    static QString lockedHere(const QString& key);
    static QString bothSides(const QString& key);
};

} // namespace rig
