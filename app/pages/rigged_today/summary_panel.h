#pragma once

#include "app/pages/rigged_today/summary_presenter.h"
#include "app/theme/theme.h"

#include <QWidget>

class QKeyEvent;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace rig {

class BlockColumn;
class ChoiceBox;
class PaperBox;
class Prompts;

// A closed record, read again: the same as on paper, and the one thing that can still be done with it.
class SummaryPanel : public QWidget
{
    Q_OBJECT

public:
    // All outlive it.
    SummaryPanel(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

    Outcome showRecord(AirframeId airframe, RecordId record);
    Outcome showLast(AirframeId airframe);
    void setLook(const Look& look);
    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);

signals:
    void backAsked();
    void changed(); // a correction was saved, and maybe a question with it
    void problemArose(const QString& sentence);

private:
    void addButtons(QVBoxLayout* layout);
    void addCorrection(QVBoxLayout* layout);
    void display();
    const SummaryReading* chosenReading() const;
    void print();
    void correct();
    QString refusalOf(const CorrectionRefusal& refusal) const;
    QString cautionOfToday() const;

    SummaryPresenter m_presenter;
    Prompts& m_prompts;
    SummaryView m_view;

    BlockColumn* m_blocks = nullptr;
    PaperBox* m_paper = nullptr;
    QWidget* m_correction = nullptr;
    ChoiceBox* m_reading = nullptr;
    QLineEdit* m_figure = nullptr;
    QLineEdit* m_reason = nullptr;
    ChoiceBox* m_who = nullptr;
    QLabel* m_said = nullptr;    // under the buttons
    QLabel* m_refused = nullptr; // under the correction
};

} // namespace rig
