#pragma once

#include "app/pages/learn/learn_view.h"
#include "app/theme/theme.h"

#include <QWidget>

class QKeyEvent;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace rig {

class LessonCard;
class PictureWidget;

// Rounds of states to be called. What is answered belongs to the view that stood here when it was pressed.
class PracticePanel : public QWidget
{
    Q_OBJECT

public:
    explicit PracticePanel(QWidget* parent = nullptr);

    // `chosen` is the coupling that a round of one would ask of.
    void display(const PracticeView& view, std::optional<CouplingId> chosen);
    // The answer to what is on the screen is in the file.
    void showAnswered(const SeatingAnswer& answer);
    void setLook(const Look& look);
    bool takeKey(QKeyEvent* event);
    // The coupling of the question on the screen, also while what was right is told; empty: none is asked.
    std::optional<CouplingId> asked() const;
    void forget(); // somebody else learns, or another airframe: nothing is held

signals:
    void beginAsked(std::optional<rig::CouplingId> coupling);
    void answered(const rig::PracticeView& shown, rig::SeatingCall said, bool sure);
    void nextAsked(); // what was right has been read

private:
    QWidget* makeStart();
    void showStart();
    void showQuestion();

    PracticeView m_view;
    std::optional<CouplingId> m_chosen;
    bool m_isTelling = false;                      // what was right stands here until it is read
    std::pair<LessonRoundId, std::size_t> m_asked; // the question that stands here
    std::optional<CouplingId> m_askedOf;
    QStackedWidget* m_stack = nullptr;
    QLabel* m_what = nullptr;
    QLabel* m_done = nullptr;
    QLabel* m_refresh = nullptr;
    QPushButton* m_one = nullptr;
    QPushButton* m_all = nullptr;
    QLabel* m_tally = nullptr;
    QLabel* m_partSeated = nullptr;
    QLabel* m_notSecured = nullptr;
    QLabel* m_empty = nullptr;
    PictureWidget* m_picture = nullptr;
    LessonCard* m_card = nullptr;
};

} // namespace rig
