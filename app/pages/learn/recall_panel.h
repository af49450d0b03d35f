#pragma once

#include "app/pages/learn/learn_view.h"
#include "app/theme/theme.h"

#include <QString>
#include <QWidget>

class QKeyEvent;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace rig {

class LessonCard;

// Rounds in words: calls, order, whom to call, when to stop.
class RecallPanel : public QWidget
{
    Q_OBJECT

public:
    explicit RecallPanel(QWidget* parent = nullptr);

    void display(const RecallView& view);
    void showAnswered(std::size_t choice, bool sure);
    void setLook(const Look& look);
    bool takeKey(QKeyEvent* event);
    void forget();

    // A task and what may be answered, in words.
    static QString askedOf(const RecallView& view, const RecallTask& task);
    static QString choiceOf(const RecallView& view, const RecallChoice& choice);

signals:
    void beginAsked();
    void answered(const rig::RecallView& shown, std::size_t choice, bool sure);
    void nextAsked();

private:
    void showStart();
    void showQuestion();

    RecallView m_view;
    bool m_isTelling = false;
    std::pair<LessonRoundId, std::size_t> m_asked; // the question that stands here
    QStackedWidget* m_stack = nullptr;
    QLabel* m_what = nullptr;
    QLabel* m_done = nullptr;
    QPushButton* m_begin = nullptr;
    QLabel* m_tally = nullptr;
    LessonCard* m_card = nullptr;
};

} // namespace rig
