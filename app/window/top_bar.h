#pragma once

#include "core/airframe/airframe.h"

#include <QStringList>
#include <QWidget>

#include <array>
#include <optional>
#include <vector>

class QHBoxLayout;
class QLabel;
class QMenu;
class QPushButton;

namespace rig {

enum class Moments { RiggedToday, Trends, BeforeTheAnnual, KnowThisAirframe, SetUp };

// At the top of the window: the airframe in hand and the others, the five moments, the file's menu. It shows
// what it is given and says what was chosen.
class TopBar : public QWidget
{
    Q_OBJECT

public:
    // The menu is the caller's.
    explicit TopBar(QMenu* fileMenu, QWidget* parent = nullptr);

    // Without a file there is nothing to choose.
    void display(const std::vector<Airframe>& airframes, std::optional<AirframeId> chosen, bool hasFile);
    // What is said of each airframe in the list, in their order.
    void nameAirframes(const QStringList& choices);
    void check(Moments moment);
    void checkNone(); // what is shown is none of the five
    void openAirframes();

protected:
    bool event(QEvent* event) override;

signals:
    void momentChosen(rig::Moments moment);
    void airframeChosen(rig::AirframeId airframe);
    void airframesOpened(); // the list is about to be seen: now it is to be named

private:
    enum class Naming { Whole, WithoutType, Short };

    void addAirframe(QHBoxLayout* layout);
    void addMoments(QHBoxLayout* layout);
    int widthOf(Naming naming) const;
    void fit();

    QPushButton* m_registration = nullptr;
    QLabel* m_type = nullptr;
    QMenu* m_airframes = nullptr;
    QPushButton* m_file = nullptr;
    std::array<QPushButton*, 5> m_moments{};
};

// As it stands in the list, where nothing more is to be said.
QString choiceOf(const Airframe& airframe);

} // namespace rig
